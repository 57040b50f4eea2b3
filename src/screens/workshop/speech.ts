/**
 * Dictation by the browser itself, only where it can listen without sending the voice anywhere: the browser must say
 * that it recognises this language on the device. Elsewhere the microphone of the phone's own keyboard remains.
 */
interface Recognition {
  lang: string;
  interimResults: boolean;
  processLocally: boolean;
  onresult: ((event: { results: ArrayLike<ArrayLike<{ transcript: string }>> }) => void) | null;
  onend: (() => void) | null;
  onerror: (() => void) | null;
  start(): void;
  stop(): void;
}

interface RecognitionKind {
  new (): Recognition;
  available?(options: { langs: string[]; processLocally: boolean }): Promise<string>;
}

const kind = (): RecognitionKind | undefined =>
  (globalThis as { SpeechRecognition?: RecognitionKind }).SpeechRecognition;

/** Whether what is said stays on the device. False where the browser cannot promise it. */
export async function canListen(language: string): Promise<boolean> {
  const recognition = kind();
  if (!recognition?.available || !('processLocally' in recognition.prototype)) return false;
  try {
    const state = await recognition.available({ langs: [language], processLocally: true });
    return state === 'available';
  } catch {
    return false;
  }
}

/** Listens until somebody stops, or says no more; `tell` gets the words. Gives back what ends it. */
export function listen(language: string, tell: (words: string) => void, onEnd: () => void): () => void {
  const Kind = kind();
  if (!Kind) return () => {};
  const recognition = new Kind();
  recognition.lang = language;
  recognition.interimResults = false;
  recognition.processLocally = true;
  recognition.onresult = ({ results }) =>
    tell(
      Array.from(results, (result) => result[0]?.transcript ?? '')
        .join(' ')
        .trim(),
    );
  recognition.onend = onEnd;
  recognition.onerror = onEnd;
  recognition.start();
  return () => recognition.stop();
}
