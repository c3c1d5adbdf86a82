/** Of keeping jobs: the server and its database. */
export const keeping: Readonly<Record<string, string>> = {
  'the server does not answer': 'der Server antwortet nicht',
  'status {0}': 'Status {0}',
  'there is no job "{0}"': 'es gibt keinen Auftrag „{0!}“',
  'no job was ever kept under this id': 'unter dieser Kennung lag nie ein Auftrag',
  'open the list of jobs': 'die Liste der Aufträge öffnen',
  'the job has no version {0}': 'der Auftrag hat keine Fassung {0}',
  'no such version of "{0}" was ever saved': 'eine solche Fassung von „{0!}“ wurde nie gesichert',
  'open the list of versions': 'die Liste der Fassungen öffnen',
  'it is too large for a job': 'es ist zu groß für einen Auftrag',
  'the request could not be answered': 'die Anfrage ließ sich nicht beantworten',
  'something broke inside the server': 'im Server ist etwas zerbrochen',
  'send JSON as /api/openapi.json describes it':
    'JSON schicken, wie /api/openapi.json es beschreibt',
  'it is not what /api/openapi.json asks for here':
    'es ist nicht, was /api/openapi.json hier verlangt',
  'mend it and send it again': 'richten und noch einmal schicken',
  'the app is not built': 'die App ist nicht gebaut',
  'there is nothing at this address': 'unter dieser Adresse ist nichts',
  'its built pages are not in dist/web': 'ihre gebauten Seiten liegen nicht in dist/web',
  'no such page or endpoint': 'diese Seite oder diesen Endpunkt gibt es nicht',
  'node scripts/set-up.mjs --app': 'node scripts/set-up.mjs --app',
  'see /api/openapi.json': 'siehe /api/openapi.json',
  'this page may not ask here': 'diese Seite darf hier nicht fragen',
  'the server answers only its own pages on this machine':
    'der Server antwortet nur seinen eigenen Seiten auf diesem Rechner',
  'open http://127.0.0.1 with the port that was printed':
    'http://127.0.0.1 mit dem gedruckten Port öffnen',
}
