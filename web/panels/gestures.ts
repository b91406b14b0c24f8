/**
 * Pointers on the stave. A click or tap is told when the finger comes up where it went down; a note taken up and moved
 * is dragged; a drag over open paper chooses a stretch, and so does a finger that rests before it moves (one that moves
 * at once scrolls the page). Knows where the pointer is, not what any of it means.
 */
import type { Hit } from '../engrave/index.ts';

export interface GestureEvents {
  /** What lies under a point of the window. */
  readonly hitAt: (x: number, y: number) => Hit | undefined;
  readonly onClick: (hit: Hit) => void;
  /** True where this note may be taken up; `touch` tells a finger, which may have wanted to scroll. */
  readonly mayDrag: (hit: Hit, touch: boolean) => boolean;
  /** The note is held at a place of the staff; `done` when it is let go there. */
  readonly onDrag: (from: Hit, place: number, done: boolean) => void;
  readonly onSelect: (from: Hit, to: Hit) => void;
  /** The mouse rests over this; undefined when it has left. */
  readonly onHover: (hit: Hit | undefined) => void;
}

/** A pointer that moves less than this many pixels has not moved; a step on the stave is five. */
const STILL = { mouse: 3, touch: 6 };
/** A finger that rests as long chooses a stretch, in milliseconds. */
const REST = 450;

type Doing = 'pressing' | 'dragging' | 'selecting';

interface Gesture {
  readonly id: number;
  readonly x: number;
  readonly y: number;
  readonly hit: Hit;
  readonly touch: boolean;
  doing: Doing;
  place: number;
}

export function listenToGestures(element: HTMLElement, events: GestureEvents): void {
  let gesture: Gesture | undefined;
  let resting = 0;
  const end = (): void => {
    clearTimeout(resting);
    gesture = undefined;
  };

  element.addEventListener('pointerdown', (event) => {
    if (event.button !== 0 || !event.isPrimary) return;
    const hit = events.hitAt(event.clientX, event.clientY);
    events.onHover(undefined);
    if (hit === undefined) return;
    const pressed = pressedAt(event, hit);
    gesture = pressed;
    if (!pressed.touch) return;
    resting = window.setTimeout(() => {
      if (gesture?.doing !== 'pressing') return;
      gesture.doing = 'selecting';
      events.onSelect(hit, hit);
    }, REST);
  });
  element.addEventListener('pointermove', (event) => {
    if (gesture !== undefined) {
      if (event.pointerId === gesture.id) goOn(gesture, event, element, events);
    } else if (event.pointerType === 'mouse') events.onHover(events.hitAt(event.clientX, event.clientY));
  });
  element.addEventListener('pointerup', (event) => {
    if (gesture === undefined || event.pointerId !== gesture.id) return;
    const { doing, hit, place } = gesture;
    end();
    if (doing === 'pressing') events.onClick(hit);
    else if (doing === 'dragging') events.onDrag(hit, place, true);
  });
  element.addEventListener('pointercancel', end);
  element.addEventListener('pointerleave', () => events.onHover(undefined));
  // A finger that drags or chooses does not scroll; the browser takes this word only from a listener that may forbid.
  element.addEventListener(
    'touchmove',
    (event) => {
      if (gesture !== undefined && gesture.doing !== 'pressing') event.preventDefault();
    },
    { passive: false },
  );
  element.addEventListener('contextmenu', (event) => {
    if (gesture?.touch) event.preventDefault();
  });
}

function pressedAt(event: PointerEvent, hit: Hit): Gesture {
  return {
    id: event.pointerId,
    x: event.clientX,
    y: event.clientY,
    hit,
    touch: event.pointerType !== 'mouse',
    doing: 'pressing',
    place: hit.place,
  };
}

/** The pressed pointer has moved. */
function goOn(gesture: Gesture, event: PointerEvent, element: HTMLElement, events: GestureEvents): void {
  const hit = events.hitAt(event.clientX, event.clientY);
  if (gesture.doing === 'pressing') begin(gesture, event, events);
  // Captured only now: a mere click keeps its focus and its double clicks as they are.
  if (gesture.doing !== 'pressing' && !element.hasPointerCapture(event.pointerId))
    element.setPointerCapture(event.pointerId);
  if (hit === undefined) return;
  if (gesture.doing === 'selecting') events.onSelect(gesture.hit, hit);
  else if (gesture.doing === 'dragging' && hit.staff === gesture.hit.staff) {
    gesture.place = hit.place;
    events.onDrag(gesture.hit, hit.place, false);
  }
}

/** What a pressed pointer is up to, once it has moved. */
function begin(gesture: Gesture, event: PointerEvent, events: GestureEvents): void {
  const across = Math.abs(event.clientX - gesture.x);
  const along = Math.abs(event.clientY - gesture.y);
  if (Math.max(across, along) < (gesture.touch ? STILL.touch : STILL.mouse)) return;
  if (gesture.hit.tone !== undefined && along >= across && events.mayDrag(gesture.hit, gesture.touch))
    gesture.doing = 'dragging';
  else if (!gesture.touch) gesture.doing = 'selecting';
}
