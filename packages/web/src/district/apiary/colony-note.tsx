import type { PhotographShown } from '@combside/contract/photograph';
import type { ColonySeen } from '@combside/contract/visit-page';
import { isSign } from '@combside/science/signs/catalogue';
import { Link } from 'wouter';
import { CorrectionsShown } from '../../ui/corrections-shown.tsx';
import { NotesShown } from '../../ui/notes-shown.tsx';
import { ResultMark } from '../../ui/result-mark.tsx';
import { sayWord } from '../../ui/say-sentence.ts';
import { SignDrawing } from '../../ui/sign-drawing.tsx';
import { timeZoneHere } from '../../ui/time-zone.ts';
import { useWords } from '../../ui/words-context.tsx';
import { StandingShown } from '../comb/standing-shown.tsx';
import { usePack } from '../use-pack.ts';

interface ColonyNoteProps {
  readonly colony: ColonySeen;
  readonly photographs: readonly PhotographShown[];
  readonly nameOf: (person: string) => string;
}

/** One colony as this visit saw it: the result in its word and mark, what was looked at, what was seen, and why. */
export function ColonyNote({ colony, photographs, nameOf }: ColonyNoteProps) {
  const words = useWords();
  const examined = colony.examinations[0];
  if (!examined) return null;
  const assessed =
    colony.assessments.find((one) => one.body.examination === examined.written.entry) ?? colony.assessments[0];
  const result = assessed?.body.result ?? 'not judged';
  const { body } = examined;
  const seen = body.signs.filter((one) => one.outcome === 'seen');
  const notSeen = body.signs.length - seen.length;
  const look = [
    sayWord(words, 'casework.depth.*', body.depth),
    ...body.boxes.map((box) =>
      words.say('district.look.box', {
        box: box.box,
        seen: box.framesSeen,
        held: box.framesHeld,
        sides: sayWord(words, 'casework.sides.*', box.sides),
      }),
    ),
    ...(body.beesShaken === null ? [] : [words.say(body.beesShaken ? 'casework.shaken.yes' : 'casework.shaken.no')]),
    ...(body.hold === null ? [] : [sayWord(words, 'casework.hold.*', body.hold)]),
    ...(body.light === null ? [] : [sayWord(words, 'casework.light.*', body.light)]),
  ];

  return (
    <article className="colony-note stack close" aria-label={words.say('district.colony', { label: colony.label })}>
      <h4 className="mark">
        <ResultMark result={result} size={28} />
        {words.say('district.colony', { label: colony.label })}: {sayWord(words, 'casework.result.*', result)}
        {body.hiveState !== 'living' && ` · ${sayWord(words, 'casework.hive-state.*', body.hiveState)}`}
      </h4>
      {assessed && assessed.body.suspected.length > 0 && (
        <p>
          <strong>
            {words.say('district.suspects', {
              conditions: words.list(
                assessed.body.suspected.map((one) => sayWord(words, 'signs.condition.*.name', one)),
              ),
            })}
          </strong>{' '}
          {assessed.body.basis === 'pack rule' && assessed.body.rule ? (
            <MadeByRule pack={assessed.body.pack.id} rule={assessed.body.rule} />
          ) : (
            words.say('district.basis.inspector')
          )}
        </p>
      )}
      <p className="quiet">{words.say('district.looked', { look: look.join('; ') })}</p>
      {seen.length === 0 ? (
        <p>{words.say('district.signs.none')}</p>
      ) : (
        <ul className="sign-plates" aria-label={words.say('district.signs')}>
          {seen.map((one) => (
            <li key={one.sign}>
              {isSign(one.sign) && <SignDrawing sign={one.sign} width={56} name="" />}
              <span>
                {sayWord(words, 'signs.sign.*.name', one.sign)}
                {one.count && `, ${sayWord(words, 'casework.count.*', one.count)}`}
                {one.amount && `, ${sayWord(words, 'casework.amount.*', one.amount)}`}
              </span>
            </li>
          ))}
        </ul>
      )}
      {notSeen > 0 && <p className="quiet">{words.say('district.signs.not-seen', { count: notSeen })}</p>}
      {body.ropeTests.map((test, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rope tests have no identity of their own and never move
        <p key={index}>
          {words.say('district.rope', {
            thread: words.unit(test.threadMillimetres, 'mm'),
            tissue: sayWord(words, 'casework.tissue.*', test.tissue),
          })}
        </p>
      ))}
      {body.finds.some((one) => one.outcome === 'seen') && (
        <p>
          {words.say('district.finds')}:{' '}
          {words.list(
            body.finds
              .filter((one) => one.outcome === 'seen')
              .map((one) => sayWord(words, 'casework.find.*', one.find)),
          )}
        </p>
      )}
      {assessed && (
        <details>
          <summary>{words.say('district.reasons')}</summary>
          <Reasons assessed={assessed.body} />
        </details>
      )}
      <p>
        <Link href={`/reasoning/colony/${colony.colony}/examination/${examined.written.entry}`}>
          {words.say('district.reasons.whole')}
        </Link>
      </p>
      {body.remarks && <p>{words.say('district.remarks', { text: body.remarks })}</p>}
      {photographs.length > 0 && (
        <ul className="photographs" aria-label={words.say('district.photographs')}>
          {photographs.map((one) => (
            <li key={one.hash}>
              {one.held ? (
                <>
                  <img
                    src={`/api/photographs/${one.hash}/small`}
                    loading="lazy"
                    alt={words.say('district.photograph-of', {
                      label: colony.label,
                      when: words.dayAndTime(one.takenAt, timeZoneHere),
                    })}
                  />
                  <Link href={`/comb/colony/${colony.colony}/photograph/${one.hash}`}>
                    {words.say('district.photograph.comb')}
                  </Link>
                  <StandingShown standing={one.comb} />
                </>
              ) : (
                <span className="quiet">{words.say('district.photograph-waits')}</span>
              )}
            </li>
          ))}
        </ul>
      )}
      <CorrectionsShown examined={examined} assessments={colony.assessments} nameOf={nameOf} timeZone={timeZoneHere} />
      <NotesShown notes={colony.notes} nameOf={nameOf} timeZone={timeZoneHere} />
    </article>
  );
}

/** The article that makes a suspicion of a named sign. Where its rules are not here, that a rule did. */
function MadeByRule({ pack, rule }: { readonly pack: string; readonly rule: string }) {
  const words = useWords();
  const rules = usePack(pack);
  const article = rules?.suspicion.find((one) => one.id === rule)?.article;
  return rules && article
    ? words.say('district.basis.article', { article, jurisdiction: rules.jurisdiction })
    : words.say('district.basis.rule');
}

function Reasons({ assessed }: { readonly assessed: ColonySeen['assessments'][number]['body'] }) {
  const words = useWords();
  return (
    <div className="stack close">
      <table className="numbers">
        <caption className="visually-hidden">{words.say('district.reasons.order')}</caption>
        <tbody>
          {assessed.differential.slice(0, 5).map((one) => (
            <tr key={one.condition}>
              <th scope="row">{sayWord(words, 'signs.condition.*.name', one.condition)}</th>
              <td>
                {words.share(one.probability, 1)}
                {one.low !== null && one.high !== null && ` (${words.share(one.low, 1)} – ${words.share(one.high, 1)})`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet">{words.say('district.reasons.expert-bands')}</p>
      <p className="quiet">
        {words.say('district.reasons.versions', {
          science: assessed.scienceVersion,
          pack: assessed.pack.id,
          version: assessed.pack.version,
        })}
      </p>
    </div>
  );
}
