/** What is shown before the dossier is there, or when it cannot be had. */
export function Waiting({ error }: { readonly error: Error | null }) {
  return (
    <main className="sheet waiting">
      <div className="matter">
        <h1>Printlore</h1>
        {error ? (
          <p className="trouble" role="alert">
            {error.message}
          </p>
        ) : (
          <p className="lead">Opening the dossier …</p>
        )}
      </div>
    </main>
  );
}
