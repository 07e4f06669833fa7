// What a signed-out phone shows: claim the shelf, join one, or open a pass.
import { useEffect, useState } from 'preact/hooks';
import { html } from '../components/html.js';
import { askToPair, claim, collectPairing, openPass } from '../signals/people.js';
import { go, hideFragment, route } from '../signals/route.js';
import { session } from '../signals/shelf.js';

export function StartScreen() {
  const { name, id } = route.value;
  const [way, setWay] = useState(name === 'claim' ? 'claim' : name === 'pass' ? 'pass' : session.value ? 'leave' : '');
  const [key] = useState(id);
  useEffect(() => { if (id) hideFragment(); }, []); // the secret leaves the address bar at once
  if (way === 'leave') {
    go('#/round');
    return null;
  }
  return html`<div class="frame"><header class="top"><span class="mark">Broodshelf</span></header><main class="screen">
    ${way === '' && html`<h1>Every colony fed, watered and looked in on.</h1>
      <p class="lead">Broodshelf keeps the round of your ant shelf: what is due, how much, and why. It works without a signal.</p>
      <button type="button" class="button main wide" onClick=${() => setWay('claim')}>I have the server's code</button>
      <button type="button" class="button wide" onClick=${() => setWay('join')}>Join a shelf that exists</button>
      <button type="button" class="button wide" onClick=${() => setWay('pass')}>I was handed a pass</button>`}
    ${way === 'claim' && html`<${Claim} code=${name === 'claim' ? key : ''} />`}
    ${way === 'join' && html`<${Join} />`}
    ${way === 'pass' && html`<${Pass} secret=${name === 'pass' ? key : ''} />`}
    ${way !== '' && html`<button type="button" class="button" onClick=${() => setWay('')}>Back</button>`}
  </main></div>`;
}

/** Run something that may fail, and give its words. @param {() => Promise<any>} work @param {(words: string) => void} tell */
async function attempt(work, tell) {
  tell('');
  try {
    return await work();
  } catch (error) {
    tell(/** @type {Error} */ (error).message);
    return undefined;
  }
}

/** @param {{code: string}} props */
function Claim({ code }) {
  const [error, setError] = useState('');
  const [busy, setBusy] = useState(false);
  /** @param {any} event */
  async function submit(event) {
    event.preventDefault();
    const form = new FormData(event.target);
    const text = (/** @type {string} */ name) => String(form.get(name) ?? '').trim();
    setBusy(true);
    await attempt(async () => {
      await claim({ code: text('code'), person_name: text('person'), household_name: text('household'), zone: text('zone') });
      go('#/colony/new');
    }, setError);
    setBusy(false);
  }
  return html`<h1>Claim this shelf</h1><form class="stack" onSubmit=${submit}>
    <label>Code <small>the server printed it when it started</small><input name="code" required defaultValue=${code} autocomplete="one-time-code" autocapitalize="characters" /></label>
    <label>Your name<input name="person" required maxlength="60" autocomplete="given-name" /></label>
    <label>Name of the shelf<input name="household" required maxlength="80" defaultValue="Our shelf" /></label>
    <label>Time zone<input name="zone" required defaultValue=${Intl.DateTimeFormat().resolvedOptions().timeZone} /></label>
    ${error && html`<p role="alert" class="caution">${error}</p>`}
    <button class="button main wide" disabled=${busy}>Claim it</button></form>`;
}

function Join() {
  const [asked, setAsked] = useState(/** @type {any} */ (null));
  const [error, setError] = useState('');
  useEffect(() => { void attempt(async () => setAsked(await askToPair()), setError); }, []);
  useEffect(() => {
    if (!asked) return undefined;
    const timer = setInterval(() => void attempt(async () => { if (await collectPairing(asked)) go('#/round'); }, setError), 2_000);
    return () => clearInterval(timer);
  }, [asked]);
  return html`<h1>Join a shelf</h1>
    ${asked && html`<p>On a phone that is signed in, open <strong>House</strong> and type this code, or scan it there.</p><p class="code">${asked.code}</p><div class="qr" dangerouslySetInnerHTML=${{ __html: asked.qr_svg }} /><p class="soft" role="status">Waiting for a keeper…</p>`}
    ${error && html`<p role="alert" class="caution">${error}</p>`}`;
}

/** @param {{secret: string}} props */
function Pass({ secret }) {
  const [error, setError] = useState('');
  const [preview, setPreview] = useState(/** @type {any} */ (null));
  /** @param {{secret: string} | {code: string}} by */
  const open = (by) => attempt(async () => {
    const seen = await openPass(by);
    if (seen) setPreview(seen);
    else go('#/round');
  }, setError);
  /** @param {any} event */
  function submit(event) {
    event.preventDefault();
    void open({ code: String(new FormData(event.target).get('code') ?? '') });
  }
  if (preview) return html`<h1>${preview.name}</h1><p>You are signed in as a keeper, so this is only a look: the pass is for ${preview.colony_ids.length} colonies, ${preview.starts_on} to ${preview.ends_on}.</p><p>${preview.instructions ?? ''}</p>`;
  if (secret) return html`<h1>You were handed a shelf</h1><p class="lead">This phone can look after some colonies for some days. No account is needed.</p>${error && html`<p role="alert" class="caution">${error}</p>`}<button type="button" class="button main wide" onClick=${() => open({ secret })}>Open the pass</button>`;
  return html`<h1>Open a pass</h1><form class="stack" onSubmit=${submit}><label>Code <small>the keeper gave it to you</small><input name="code" required autocapitalize="characters" autocomplete="off" /></label>${error && html`<p role="alert" class="caution">${error}</p>`}<button class="button main wide">Open the pass</button></form>`;
}
