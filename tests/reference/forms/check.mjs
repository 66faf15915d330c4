// Reads files of forms with a FHIR library from the registry (npm fhir, R4) and holds it against what the portal read: check.mjs FILE, as
// `forms` prints it. What the library finds faulty the portal refuses; what the portal reads, the library finds sound, and reads alike: the same
// questions in the same order, and the same figure for each answer, on the way through XML and back. The invariant que-2 is asked by FHIRPath.

import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import fhirpath from 'fhir';

const { Fhir } = fhirpath;
const fhir = new Fhir();
const ORDINAL = 'http://hl7.org/fhir/StructureDefinition/ordinalValue';

const ids = (items = []) => items.flatMap((item) => [item.linkId, ...ids(item.item)]);

/** What is wrong with a file by the library. */
function faults(file) {
  const found = fhir.validate(file).messages.filter(({ severity }) => severity === 'error').map(({ location, message }) => `${location}: ${message}`);
  const all = ids(file.item);
  if (new Set(all).size < all.length) found.push('que-2: a linkId is there twice');
  return found;
}

function questions(file) {
  const read = fhir.xmlToObj(fhir.objToXml(file));
  return read.item.map((item) => ({
    id: item.linkId,
    // Nothing stands over a question of these files.
    under: '',
    text: item.text,
    answers: item.answerOption.map((answer) => {
      const said = [...(answer.extension ?? []), ...(answer.valueCoding.extension ?? [])].find(({ url }) => url === ORDINAL);
      return [Number(said.valueDecimal), answer.valueCoding.display];
    }),
  }));
}

let failed = 0;
const all = JSON.parse(readFileSync(process.argv[2], 'utf8'));
for (const { name, file, read, refused } of all) {
  const found = faults(file);
  const alike = read !== null && found.length === 0 && isDeepStrictEqual(questions(file), read.questions);
  const bothRefuse = refused !== null && found.length > 0;
  if (alike || bothRefuse) continue;
  failed += 1;
  console.log(`fail ${name}: the portal ${refused === null ? 'reads it' : `says: ${refused}`}; the library ${found.length > 0 ? `says: ${found.join('; ')}` : 'finds it sound'}`);
}
console.log(`${all.length - failed} of ${all.length} files of forms are read alike`);
process.exit(failed === 0 && all.length > 0 ? 0 : 1);
