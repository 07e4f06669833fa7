## Nudges on this phone.

phone-nudges-title = Nudges on this phone
phone-nudges-last = The last one came { $when }.
phone-nudges-none = None has come yet.
phone-nudges-silent = { $name } has not answered for a while: open the app on it.
phone-nudges-somebody = Somebody

phone-nudges-elsewhere-unheard = Nudges do not reach { $who } ({ $phone }): ask them to open the app on it.
phone-nudges-elsewhere-unseen = { $who } has not opened the app for a month ({ $phone }), so nudges may have stopped there.

phone-nudges-ask = Tell me when something is due
phone-nudges-test = Send a test
phone-nudges-stop = Turn off here

phone-nudges-state-unsupported = This browser cannot receive nudges. The round here is always up to date when you open the app.
phone-nudges-state-install-first = On an iPhone or iPad put the app on the home screen first: Share, then Add to Home Screen. Open it there and come back to this page.
phone-nudges-state-denied = Nudges are blocked for this app in the browser’s settings. Allow notifications there, then come back.
phone-nudges-state-off = Nudges are off. When something is due at your care hours, this phone can tell you.
phone-nudges-state-on = Nudges come to this phone.

phone-nudges-tested-waiting = Sent; waiting for this phone to say that it came…
phone-nudges-tested-heard = It came. Nudges work on this phone.
phone-nudges-tested-silent = It did not come.

# $outcome is a short word of the service, as it came.
phone-nudges-not-taken = The push service did not take it: { $outcome }.
phone-nudges-not-heard = It was sent, but this phone did not say that it came.
