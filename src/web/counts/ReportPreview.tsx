import type { ReportRead } from '../../contract/index.ts';

/** Labels shown of a report that was read. */
const SHOWN = 30;

/** What a pasted report was understood to say, with every figure that could not be read. */
export function ReportPreview({ report }: { readonly report: ReportRead }) {
  const { form, understood, labels, counts, faults } = report;
  const grades = [...new Set(counts.map(({ grade }) => grade))];
  const cells = new Map(counts.map(({ label, grade, count }) => [`${label}\n${grade}`, count]));
  return (
    <div className="preview">
      <p className="detail">
        Read as {form}. {understood.join(' ')}
      </p>
      {faults.map(({ line, found, expected, fate }) => (
        <p key={`${line} ${found} ${expected}`} className="slip-note">
          {line === null ? '' : `Line ${line}: `}found “{found}”, expected {expected}. {fate}
        </p>
      ))}
      {labels.length > 0 ? (
        <div className="wide">
          <table className="list preview-table">
            <thead>
              <tr>
                <th scope="col">Label</th>
                {grades.map((grade) => (
                  <th key={grade} scope="col" className="figure">
                    {grade}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {labels.slice(0, SHOWN).map((label) => (
                <tr key={label}>
                  <th scope="row">{label}</th>
                  {grades.map((grade) => (
                    <td key={grade} className="figure" data-head={grade}>
                      {cells.get(`${label}\n${grade}`) ?? 0}
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      ) : null}
      {labels.length > SHOWN ? (
        <p className="detail">And {labels.length - SHOWN} more labels.</p>
      ) : null}
    </div>
  );
}
