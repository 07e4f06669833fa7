// What went: records that were deleted or voided, newest first, each with its way back.
import { useEffect, useState } from 'preact/hooks';
import { useAttempt } from '../components/attempt.js';
import { fullDay, moment } from '../components/days.js';
import { Empty, Skeleton } from '../components/empty.js';
import { html } from '../components/html.js';
import { Icon } from '../components/icon.js';
import { say } from '../signals/actions.js';
import { takeBack, whatWent } from '../signals/past.js';
import { rows } from '../signals/shelf.js';
import { t } from '../text/en.js';
import { m } from '../text/en-more.js';
import { capital, eventInWords } from './event-words.js';
import { kindName, nameInWords } from './field-words.js';

const g = m.gone;

export function GoneScreen() {
  const [list, setList] = useState(/** @type {import('../signals/past.js').Gone[] | null} */ (null));
  const { attempt, busy, said } = useAttempt();
  const load = () => attempt(async () => setList(await whatWent()));
  useEffect(() => { void load(); }, []);
  /** @param {import('../signals/past.js').Gone} each */
  const back = (each) => attempt(async () => {
    await takeBack(each);
    say(g.back(titleOf(each)));
    setList((list ?? []).filter((other) => other.id !== each.id));
  });
  return html`<h1>${g.title}</h1><p class="soft">${g.about}</p>${said}
    ${said && !list && html`<button type="button" class="button" onClick=${load}>${m.past.again}</button>`}
    ${!list && busy && html`<${Skeleton} words=${t.loading} />`}${list?.length === 0 && html`<${Empty} title=${g.none} />`}
    <ul class="diary went">${list?.map((each) => html`<li key=${each.id} class="row"><span class="badge"><${Icon} name=${each.kind === 'feeding' ? each.set.need : each.kind} /></span>
      <div class="grow"><p>${titleOf(each)}</p><p class="soft">${whereOf(each)}</p><p class="soft">${g.by(rows.value.get(each.by ?? '')?.set.name ?? m.past.somebody, moment(each.at_ms))}</p></div>
      <button type="button" class="button" disabled=${busy} aria-label=${`${g.take_back}: ${titleOf(each)}`} onClick=${() => back(each)}>${g.take_back}</button></li>`)}</ul>`;
}

/** @param {import('../signals/past.js').Gone} each */
const isEvent = (each) => typeof each.set.happened_at === 'string';

/** @param {import('../signals/past.js').Gone} each */
const titleOf = (each) => (isEvent(each) ? capital(eventInWords(/** @type {any} */ (each))) : nameInWords(each));

/** Which colony a log was of and when, or what kind of thing it is. @param {import('../signals/past.js').Gone} each */
function whereOf(each) {
  if (!isEvent(each)) return kindName(each.kind);
  const name = rows.value.get(each.set.colony_id ?? each.set.place_id)?.set.name;
  return [name, fullDay(each.set.happened_at)].filter(Boolean).join(', ');
}
