/** What went wrong with storage, in German: what is safe first, then what to do. */
export const STORAGE = {
  'storage.full':
    'Alles bisher Gespeicherte ist sicher, aber dieses Gerät hat keinen Platz für mehr. Schaffe Platz und drücke dann noch einmal auf Prüfen.',
  'storage.blocked':
    'Deine Antworten sind sicher. Detent ist noch in einem anderen Tab offen, der sie festhält: schließe diesen Tab und versuche es dann noch einmal.',
  'storage.newer':
    'Deine Antworten sind sicher und unverändert. Ein neueres Detent hat sie übernommen, vielleicht in einem anderen Tab: lade diese Seite neu.',
  'storage.deleted':
    'Was hier gespeichert war, wurde in einem anderen Tab von diesem Gerät genommen. Unter diesem Namen lässt sich nichts mehr speichern. Lade diese Seite neu.',
  'storage.elsewhere':
    'Deine Antworten sind sicher. Diese Übung ging in einem anderen Tab weiter, darum wurde das hier nicht gespeichert: mach dort weiter oder drücke auf Hier weitermachen.',
  'storage.unavailable':
    'Dieser Browser gibt Detent gerade keinen Ort zum Speichern. Ein privates Fenster kann der Grund sein: öffne Detent in einem normalen Fenster oder lade neu.',
  'storage.unwritten':
    'Das ließ sich gerade nicht speichern; vielleicht hat das Gerät keinen Platz mehr. Was vorher gespeichert wurde, ist sicher. Schaffe Platz und drücke dann noch einmal.',
  'storage.unreadable':
    '{count, plural, one {Eine gespeicherte Antwort} other {# gespeicherte Antworten}} {count, plural, one {ist für diese Version nicht lesbar und bleibt} other {sind für diese Version nicht lesbar und bleiben}} weg. Gelöscht wurde nichts.',
} as const;
