/** The width of the window, followed as it is resized; Ink 6.8 has no such hook. */
import { useStdout } from 'ink';
import { useEffect, useState } from 'react';

/** Terminal columns now. */
export const useColumns = (): number => {
  const { stdout } = useStdout();
  const [columns, setColumns] = useState(stdout.columns);
  useEffect(() => {
    const measure = (): void => setColumns(stdout.columns);
    stdout.on('resize', measure);
    return () => {
      stdout.off('resize', measure);
    };
  }, [stdout]);
  return columns;
};
