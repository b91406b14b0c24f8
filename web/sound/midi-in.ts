/** Notes played on a MIDI keyboard, where the browser offers one. */
export type MidiState =
  | { readonly ok: true; readonly names: readonly string[] }
  | { readonly ok: false; readonly why: string };

const NOTE_ON = 0x90;

/** Asks for the keyboards and listens to all of them, also those plugged in later. */
export async function listenToKeyboards(onNote: (midi: number) => void): Promise<MidiState> {
  if (!('requestMIDIAccess' in navigator))
    return { ok: false, why: 'This browser offers no MIDI keyboards.' };
  try {
    const access = await navigator.requestMIDIAccess({ sysex: false });
    const listen = (input: MIDIInput): void => {
      input.onmidimessage = ({ data }) => {
        const [status, key, velocity] = data ?? [];
        // A note-on of no velocity is how many keyboards say that a key was let go.
        if (status !== undefined && (status & 0xf0) === NOTE_ON && key !== undefined && velocity) onNote(key);
      };
    };
    for (const input of access.inputs.values()) listen(input);
    access.onstatechange = ({ port }) => {
      if (port?.type === 'input' && port.state === 'connected') listen(port as MIDIInput);
    };
    return { ok: true, names: [...access.inputs.values()].map((input) => input.name ?? 'a keyboard') };
  } catch {
    return { ok: false, why: 'The browser did not give leave to listen to MIDI keyboards.' };
  }
}
