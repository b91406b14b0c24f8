/** Sheets: which are chosen, and saved as files. */
import type { Handle } from './handle.ts';
import { saveSheetPages } from './sheet-files.ts';

export function createSheets(desk: Handle) {
  const { get, set, told } = desk;
  return {
    /** Chooses a script's sheet, or lets it go. */
    tick: (script: number): void => {
      const ticked = new Set(get().ticked);
      if (!ticked.delete(script)) ticked.add(script);
      set({ ticked });
    },
    saveSheets: async (): Promise<void> => {
      await saveSheetPages(get().stack?.name ?? 'Class');
      told('Saved.');
    },
  };
}
