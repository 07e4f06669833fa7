// How to put the app on the home screen, by platform.
import { offer, platform } from '../signals/home-screen.js';
import { m } from '../text/en-more.js';
import { html } from './html.js';

export function Install() {
  const here = platform();
  if (here === 'installed') {
    return html`
      <section class="card">
        <h2>${m.welcome.install}</h2>
        <p>${m.welcome.installed}</p>
      </section>
    `;
  }
  return html`
    <section class="card">
      <h2>${m.welcome.install}</h2>
      <p class="soft">${m.welcome.why_install}</p>
      ${
        offer.value
          ? html`
              <button type="button" class="button main" onClick=${() => offer.value.prompt()}>${m.welcome.now}</button>
            `
          : html`
              <ol class="numbered">
                ${m.welcome[here].map(
                  (step) => html`
                    <li>${step}</li>
                  `,
                )}
              </ol>
            `
      }
    </section>
  `;
}
