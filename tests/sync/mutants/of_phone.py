"""Faults of the app: of ``pwa/database`` and ``pwa/sync``, put into a copy of the modules."""

from __future__ import annotations

from tests.sync.mutants.mutant import BUSY, EARLIER_THAN_KNOWN, RESTORING, Change, Mutant

STORE, PAST, VERDICTS = "database/store.js", "database/past.js", "database/verdicts.js"
DRAIN = "sync/drain.js"
GIVE_BACK = r"if \(ended\) await giveBack\([^;]*;"
TAKE = r"const next = await store\.take\(answer, refill, held, sentMs\);"


MUTANTS = (
    Mutant(
        "what a phone makes may be earlier than what it knew",  # what the app once did: a deletion was undone
        changes=(EARLIER_THAN_KNOWN,),
        run=(["sync", 1], ["skew", 1, -1], ["void", 1, 5], ["backup"], ["restore", 0, 0]),
    ),
    Mutant(
        "an overtaken answer sets back what is known",
        changes=(Change(VERDICTS, r"if \(next\) \{", "if (true) {"),),
        run=(
            *(["sync", 1], ["begin", 1, 0], ["advance", 1, 0, 2], ["rename", 0, 5], ["sync", 0], ["sync", 1]),
            *(["skew", 1, -1], ["advance", 1, 0, 1], ["void", 1, 5], ["backup"], ["restore", 0, 0]),
        ),
    ),
    Mutant(
        "cursor moved first",
        changes=(
            Change(
                DRAIN,
                TAKE,
                "if (!answer.reset || !answer.more) {"
                " held = { epoch: answer.epoch, cursor: answer.cursor }; await store.setMeta(held); }"
                " const next = await store.take(answer, refill, held, sentMs);",
            ),
        ),
        steps=BUSY,
    ),
    Mutant(
        "outbox cleared on sending",
        changes=(
            Change(
                DRAIN,
                r"const answer = await post\(",
                "for (const op of ops) await store.discard(op.op_id); const answer = await post(",
            ),
        ),
        steps=BUSY,
    ),
    Mutant(
        "nothing given back after a restore",
        changes=(Change(STORE, GIVE_BACK, ""),),
        steps=RESTORING,
    ),
    Mutant(
        "journal queued after the epoch is stored",  # what the app once did: killed in between, it never sent it
        changes=(
            Change(STORE, GIVE_BACK, ""),
            Change(
                DRAIN,
                r"import \{ patience, post \}",
                "import { giveBackLate } from '../database/late.js';\nimport { patience, post }",
            ),
            Change(
                DRAIN,
                TAKE,
                "const { epoch: before } = await store.held();"
                " const next = await store.take(answer, refill, held, sentMs);"
                " if (before && before !== answer.epoch) await giveBackLate(store, before);",
            ),
        ),
        modules={
            "database/late.js": "import { inTransaction } from './open.js';\n"
            "import { giveBack } from './past.js';\n"
            "const stores = ['rows', 'gone', 'outbox', 'journal', 'meta'];\n"
            "export const giveBackLate = (store, epoch) =>\n"
            "  inTransaction(store.name, stores, 'readwrite', (tx) => giveBack(tx, epoch, null, Date.now()));\n",
        },
        run=(["backup"], ["rename", 0, 0], ["sync", 0], ["restore", 0, 1], ["crash", 0, 4]),
    ),
    Mutant(
        "an overtaken answer is taken",  # what the app once did: older rows came back for good
        changes=(
            Change(
                STORE,
                r"const next = now\.epoch === held\.epoch && now\.cursor === held\.cursor;",
                "const next = true;",
            ),
        ),
        run=(
            *(["sync", 2], ["rename", 2, 0], ["begin", 2, 1], ["advance", 2, 1, 2], ["rename", 2, 1]),
            *(["sync", 2], ["begin", 2, 0], ["advance", 2, 0, 2]),
        ),
    ),
    Mutant(
        "a frozen tab counts as contact",  # what the app once did: the journal was not given to a restored server
        changes=(
            Change(STORE, r"meta\.put\(sentMs, 'last_sync_ms'\)", "meta.put(Date.now(), 'last_sync_ms')"),
        ),
        run=(
            *(
                ["found", 2],
                ["backup"],
                ["sync", 2],
                ["begin", 2, 1],
                ["advance", 2, 1, 2],
                ["restore", 0, 0],
            ),
            ["days", 40],
        ),
    ),
    Mutant(
        "a second reset keeps the first",  # what the app once did: rows of the first came back
        changes=(Change(DRAIN, r"if \(answer\.first \|\| !refill\)", "if (!refill)"),),
        run=(
            *(["backup"], ["sync", 1], ["sync", 2], ["restore", 0, 0], ["begin", 1, 0], ["advance", 1, 0, 2]),
            *(["void", 2, 3], ["rename", 1, 2], ["sync", 2], ["days", 401]),
        ),
    ),
    Mutant(
        "refused is dropped",
        changes=(
            Change(
                VERDICTS,
                r"writes\.put\(\{ \.\.\.entry, state: 'rejected', answer: verdict \}\);",
                "writes.delete(entry.op_id);",
            ),
        ),
        steps={**BUSY, "bad": 10},
    ),
    Mutant(
        "conflicts not kept",
        changes=(Change(VERDICTS, r"if \(verdict\.conflicts\?\.length\)", "if (false)"),),
        steps=BUSY,
    ),
    Mutant(
        "what was acknowledged is not sent again",
        changes=(Change(PAST, r"const again = operationsOf\(.*?\);\n", "const again = [];\n"),),
        run=(["backup"], ["rename", 0, 0], ["sync", 0], ["restore", 0, 1]),
    ),
    Mutant(
        "what is heard again is in the journal as of the first time",
        changes=(
            Change(
                VERDICTS,
                r"if \(taken\.length\) inBulk\(tx, 'journal'\)\.put\(\{ op_id: uuid7\(\), ops: taken,",
                "const known = new Set((await tx.objectStore('journal').getAll())"
                ".flatMap((page) => page.ops).map((op) => op.op_id));"
                " const first = taken.filter((op) => !known.has(op.op_id));"
                " if (first.length) inBulk(tx, 'journal').put({ op_id: uuid7(), ops: first,",
            ),
        ),
        run=(
            *(["sync", 1], ["backup"], ["log", 1, 0], ["sync", 1], ["days", 20], ["restore", 0, 0]),
            *(["sync", 1], ["days", 20], ["sync", 1], ["restore", 0, 0]),
        ),
    ),
    Mutant(
        "nothing is offered",
        changes=(Change(PAST, r"me\?\.role === 'keeper' && refill", "false"),),
        run=(
            *(["sync", 1], ["backup"], ["log", 1, 0], ["sync", 1], ["days", 40], ["sync", 1]),
            ["restore", 0, 0],
        ),
    ),
    Mutant(
        "the app stamps its offers as of now",
        changes=(
            Change(
                PAST,
                r"made_ms,\s+device,\s+stamps,\n",
                "made_ms: Date.now(), device, stamps: {},\n",
            ),
        ),
        run=(
            *(["sync", 1], ["backup"], ["rename", 1, 0], ["sync", 1], ["sync", 0], ["rename", 0, 0]),
            *(["sync", 0], ["restore", 0, 0], ["sync", 1]),
        ),
    ),
    Mutant(
        "gone rows are forgotten",
        changes=(Change(STORE, r"if \(row\?\.set\?\.gone\) gone\.put\(row\);", ""),),
        run=(
            *(["log", 0, 0], ["sync", 0], ["sync", 1], ["backup"], ["void", 0, 1], ["sync", 0], ["sync", 1]),
            *(["days", 40], ["sync", 0], ["sync", 1], ["restore", 0, 0]),
        ),
    ),
)
