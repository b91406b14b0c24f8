/** The music font comes with the page: nothing is fetched from elsewhere. */
import academico from '@vexflow-fonts/academico/academico.woff2?url';
import bravura from '@vexflow-fonts/bravura/bravura.woff2?url';
import { Font, Metrics, MetricsDefaults } from 'vexflow/core';

let loading: Promise<void> | undefined;

/**
 * Loads Bravura (signs) and Academico (words in the score). Nothing may be drawn before this resolves, since heads
 * would be measured in another font; `createEngraving` waits for it by itself. Rejects where the files are missing.
 */
export function loadMusicFont(): Promise<void> {
  loading ??= Promise.all([Font.load('Bravura', bravura), Font.load('Academico', academico)]).then(
    () => {
      // As `VexFlow.setFonts` does, which would bring all that the engraver has with it.
      MetricsDefaults.fontFamily = 'Bravura,Academico';
      Metrics.clear();
    },
    (error: unknown) => {
      // The next attempt may find the network again.
      loading = undefined;
      throw error;
    },
  );
  return loading;
}
