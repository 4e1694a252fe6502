import {
  Button,
  ComboBox,
  Input,
  Label,
  ListBox,
  ListBoxItem,
  Popover,
  Text,
} from 'react-aria-components';
import { useBook } from '../app/context.ts';

interface Props {
  readonly hint: string;
  /** Takes the id of a product, or plain words. */
  readonly set: (product: string) => void;
}

/** What the printing came in: one of the dossier's products by its title, or plain words. */
export function ProductField({ hint, set }: Props) {
  const { dossier } = useBook();
  const typed = (words: string) => {
    const known = dossier.products.find(({ id, cells }) => cells.title === words || id === words);
    set(known?.id ?? words);
  };
  return (
    <ComboBox className="field" allowsCustomValue onInputChange={typed}>
      <Label>Product</Label>
      <span className="combo">
        <Input />
        <Button aria-label="All products">⌄</Button>
      </span>
      <Text slot="description" className="hint">
        {hint}
      </Text>
      <Popover className="menu">
        <ListBox>
          {dossier.products.map(({ id, cells }) => (
            <ListBoxItem key={id} id={id} textValue={cells.title || id}>
              {cells.title || id}
            </ListBoxItem>
          ))}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
