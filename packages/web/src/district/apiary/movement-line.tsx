import type { ApiaryPage } from '@combside/contract/apiary-page';
import { Link } from 'wouter';
import { sayWord } from '../../ui/say-sentence.ts';
import { useWords } from '../../ui/words-context.tsx';
import { useDeskAddress } from '../desk-address.ts';

interface MovementLineProps {
  readonly movement: ApiaryPage['movements'][number];
  readonly apiary: string;
  readonly otherEnds: ApiaryPage['otherEnds'];
}

/** One movement of bees or of what they lived in, as this apiary sees it; the other end is a link where it may be read. */
export function MovementLine({ movement, apiary, otherEnds }: MovementLineProps) {
  const words = useWords();
  const desk = useDeskAddress();
  const body = movement.movement.current?.body;
  if (!body) return null;
  const other = body.from === apiary ? body.to : body.from;
  const named = otherEnds.find((one) => one.apiary === other);
  const nameOf = (end: string | null) =>
    end === apiary
      ? words.say('district.apiary.here')
      : end === null
        ? words.say('district.apiary.elsewhere')
        : (named?.name ?? words.say('planning.unknown-apiary'));
  const day =
    body.earliest === body.latest ? words.day(body.latest) : `${words.day(body.earliest)} – ${words.day(body.latest)}`;
  return (
    <li>
      {words.say('district.apiary.movement', {
        day,
        what:
          body.quantity === null
            ? words.say('district.counted-unknown', { what: sayWord(words, 'district.what.*', body.what) })
            : sayWord(words, 'district.counted.*', body.what, { count: body.quantity }),
        how: sayWord(words, 'district.moved.*', body.how),
        from: nameOf(body.from),
        to: nameOf(body.to),
      })}
      {named && (
        <>
          {' '}
          <Link href={desk.to(`/apiary/${named.apiary}`)}>
            {words.say('district.apiary.open', { name: named.name })}
          </Link>
        </>
      )}
    </li>
  );
}
