/** A kept photo. Its bytes are shown from memory: the page may load no picture out of a text. */
import { useEffect, useState } from 'react';

function blobOf(dataUrl: string): Blob {
  const bytes = atob(dataUrl.slice(dataUrl.indexOf(',') + 1));
  return new Blob([Uint8Array.from(bytes, (letter) => letter.charCodeAt(0))], { type: 'image/jpeg' });
}

export function Photo({ photo, alt }: { readonly photo: string; readonly alt: string }) {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    const made = URL.createObjectURL(blobOf(photo));
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [photo]);
  return address && <img className="bench-photo" src={address} alt={alt} />;
}
