/**
 * The engraver: a score and its marks drawn as closed score. The only door to it, and with it the only user of
 * VexFlow in the project.
 *
 *     import './engrave/engrave.css';
 *     await loadMusicFont();
 *     const engraving = createEngraving(container, { onSelectFinding: (id) => … });
 *     engraving.update({ score, marks: marksOf(review), width: container.clientWidth, layers: ALL_LAYERS });
 *
 * The container's children belong to the engraver. The drawing is hidden from screen readers (glyphs are
 * private-use characters): describe the music beside it, with {@link describeMoment}. Colours are custom
 * properties, listed in engrave.css.
 */
export { describeMoment } from './describe.ts';
export { createEngraving } from './engraving.ts';
export { loadMusicFont } from './font.ts';

export type {
  Caret,
  ClientBox,
  Engraving,
  EngravingEvents,
  EngravingInput,
  Ghost,
  Hit,
  Layers,
  MarkedFinding,
  Marks,
  Stretch,
} from './input.ts';
export { ALL_LAYERS, isShown, markedFinding, marksOf, NO_LAYERS, NO_MARKS } from './input.ts';
