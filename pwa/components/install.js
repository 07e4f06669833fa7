// How to put the app on the home screen, by platform.
import { offer, platform } from '../signals/home-screen.js';
import { html } from './html.js';
import { say, sayOf } from '../words/say.js';

export function Install() {
  const here = platform();
  if (here === 'installed') {
    return html`
      <section class="card">
        <h2>${say('welcome-install')}</h2>
        <p>${say('welcome-installed')}</p>
      </section>
    `;
  }
  return html`
    <section class="card">
      <h2>${say('welcome-install')}</h2>
      <p class="soft">${say('welcome-why-install')}</p>
      ${
        offer.value
          ? html`
              <button type="button" class="button main" onClick=${() => offer.value?.prompt()}>
                ${say('welcome-now')}
              </button>
            `
          : html`
              <ol class="numbered">
                ${['1', '2', '3'].map(
                  (step) => html`
                    <li>${sayOf('welcome', `${here} ${step}`)}</li>
                  `,
                )}
              </ol>
            `
      }
    </section>
  `;
}
