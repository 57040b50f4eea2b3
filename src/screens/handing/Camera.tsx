/** Looks for codes through the camera, a few times a second. Nothing it sees is kept or sent. */
import { useEffect, useRef, useState } from 'react';
import { say as phrase } from '../../core/questions/phrase.ts';
import { readCode } from '../../exchange/qr.ts';
import type { Say } from '../../words/words.ts';
import { pixelsOfVideo } from './picture.ts';

/** Time between two looks. */
const PAUSE_MS = 250;

interface Props {
  readonly say: Say;
  /** Called for every code seen, the same one again included. */
  readonly onText: (text: string) => void;
  readonly onClose: () => void;
}

async function openCamera(): Promise<MediaStream | null> {
  try {
    return await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
  } catch {
    // No camera, not allowed, or a page over plain http, where there are no media devices.
    return null;
  }
}

export function Camera({ say, onText, onClose }: Props) {
  const video = useRef<HTMLVideoElement>(null);
  const [refused, setRefused] = useState(false);
  const latest = useRef(onText);
  latest.current = onText;
  useEffect(() => {
    let stream: MediaStream | null = null;
    let timer: ReturnType<typeof setTimeout> | undefined;
    let closed = false;
    const look = async () => {
      const pixels = video.current && pixelsOfVideo(video.current);
      const code = pixels && (await readCode(pixels));
      if (closed) return;
      if (code?.ok) latest.current(code.value);
      timer = setTimeout(() => void look(), PAUSE_MS);
    };
    void openCamera().then(async (opened) => {
      stream = opened;
      if (closed || !opened || !video.current) {
        for (const track of opened?.getTracks() ?? []) track.stop();
        if (!closed) setRefused(true);
        return;
      }
      video.current.srcObject = opened;
      await video.current.play().catch(() => {});
      void look();
    });
    return () => {
      closed = true;
      clearTimeout(timer);
      for (const track of stream?.getTracks() ?? []) track.stop();
    };
  }, []);
  return (
    <div className="camera">
      {refused ? (
        <p className="note" role="alert">
          {say(phrase('handing.no-camera'))}
        </p>
      ) : (
        <>
          <video ref={video} muted playsInline aria-label={say(phrase('handing.camera-view'))} />
          <p className="aside">{say(phrase('handing.camera-hint'))}</p>
        </>
      )}
      <button type="button" className="button plain" onClick={onClose}>
        {say(phrase('handing.camera-close'))}
      </button>
    </div>
  );
}
