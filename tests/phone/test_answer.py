"""What the server is asked when a screen is shown."""

from __future__ import annotations

import pytest
from playwright.sync_api import expect

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]

OVERTAKEN = """async () => {
  const { useAnswer } = await import(`/static/${document.body.dataset.build}/components/answer.js`);
  const { h, render } = await import('preact');
  const real = window.fetch;
  const questions = [];
  window.fetch = (address, how) =>
    address === '/api/mail' ? new Promise((answer) => questions.push(answer)) : real(address, how);
  let ask;
  function Asks() {
    const found = useAnswer('/api/mail');
    ask = found.ask;
    return h('p', { class: 'told' }, found.answer?.told);
  }
  render(h(Asks), document.body.appendChild(document.createElement('div')));
  while (!questions.length) await new Promise(requestAnimationFrame); // it asks when it is shown
  const [older, newer] = [ask(), ask()];
  questions[2](Response.json({ told: 'newer' }));
  await newer;
  questions[1](Response.json({ told: 'older' }));
  await older;
}"""


def test_an_answer_that_a_newer_one_overtook_does_not_take_its_place(phone, server):
    page = phone()
    page.goto(server.url)
    page.evaluate(OVERTAKEN)

    expect(page.locator(".told")).to_have_text("newer")
