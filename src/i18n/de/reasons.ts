/** Words for the reasons every shop starts with, and for a stoppage that nobody explained. By reason id. */
export const reasonWords: Record<string, string> = {
  material: 'Warten auf Material',
  machine: 'Maschine oder Werkzeug',
  quality: 'Frage zur Qualität',
  'called-away': 'Weggerufen',
  'set-up': 'Rüsten',
  break: 'Pause',
  rework: 'Nacharbeit',
  'not-stated': 'Nicht angegeben',
};
