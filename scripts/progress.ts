/** Says on the error stream what is being done, once it takes over a second. */
export function progress(): (doing: string) => void {
  const start = performance.now();
  return (doing) => {
    if (performance.now() - start > 1000) process.stderr.write(`… ${doing}\n`);
  };
}
