import {
  Button,
  ComboBox,
  Input,
  Label,
  ListBox,
  ListBoxItem,
  Popover,
} from 'react-aria-components';
import { useBook } from '../app/context.ts';

interface Props {
  /** Id of a source, or the words for a new one. */
  readonly value: string;
  readonly set: (source: string) => void;
}

/** Who states it: one of the dossier's sources, or a new one in the collector's words. */
export function SourceField({ value, set }: Props) {
  const { dossier } = useBook();
  const known = dossier.sources.find(({ id }) => id === value);
  return (
    <ComboBox
      className="field"
      allowsCustomValue
      autoFocus
      menuTrigger="focus"
      defaultInputValue={known?.cells.title ?? value}
      onInputChange={set}
    >
      <Label>Who states it</Label>
      <span className="combo">
        <Input />
        <Button aria-label="All sources">⌄</Button>
      </span>
      <Popover className="menu">
        <ListBox>
          {dossier.sources.map(({ id, cells }) => (
            <ListBoxItem key={id} id={id} textValue={cells.title || id}>
              {cells.title || id}
            </ListBoxItem>
          ))}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
