/** The size of the window, followed as it is resized; Ink 6.8 has no such hook. */
import { useStdout } from 'ink';
import { useEffect, useState } from 'react';
import { sizeOf, type Window } from './window-size.ts';

/** The window now. */
export const useWindow = (): Window => {
  const { stdout } = useStdout();
  const [size, setSize] = useState(() => sizeOf(stdout));
  useEffect(() => {
    const measure = (): void => setSize(sizeOf(stdout));
    stdout.on('resize', measure);
    return () => {
      stdout.off('resize', measure);
    };
  }, [stdout]);
  return size;
};
