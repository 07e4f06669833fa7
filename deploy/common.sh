# Shared by deploy/run and deploy/test: saying what happens, and the virtual environment. Sourced, not run.

say() { printf '\n== %s\n' "$*"; }
fail() { printf '\nStopped: %s\n' "$*" >&2; exit 1; }

# The first Python of at least 3.11 on the PATH.
find_python() {
  local candidate
  for candidate in "${PYTHON:-}" python3.14 python3.13 python3.12 python3.11 python3; do
    [ -n "$candidate" ] && command -v "$candidate" >/dev/null 2>&1 || continue
    "$candidate" -c 'import sys; sys.exit(sys.version_info < (3, 11))' 2>/dev/null && { echo "$candidate"; return; }
  done
  fail "Python 3.11 or newer is needed. Debian/Ubuntu: apt-get install python3 python3-venv. macOS: install it from python.org or with your package manager."
}

# make_environment FOLDER CONSTRAINTS WHAT [PLAIN]: a virtual environment with the package, remade when its recipe
# changed. PLAIN is what to install where WHAT cannot be had.
make_environment() {
  local folder=$1 constraints=$2 what=$3 plain=${4:-} python stamp
  python=$(find_python)
  stamp=$(cat pyproject.toml "$constraints" | cksum | tr ' ' '-')
  if [ "$(cat "$folder/.stamp" 2>/dev/null)" = "$stamp" ]; then
    say "Python environment $folder is up to date"
    return
  fi
  say "Making the Python environment $folder with $("$python" --version)"
  "$python" -m venv --clear "$folder" || fail "no virtual environment could be made. Debian/Ubuntu: apt-get install python3-venv"
  install() {
    "$folder/bin/python" -m pip install --quiet --disable-pip-version-check --constraint "$constraints" \
      --only-binary brotli,tdewolff-minify --editable "$1"
  }
  if [ -z "$plain" ] || ! install "$what" 2>/dev/null; then
    install "${plain:-$what}" || fail "the packages could not be installed; is the network there?"
    [ -z "$plain" ] || say "Without the packages that make the phone's files smaller: there are none for this machine"
  fi
  echo "$stamp" > "$folder/.stamp"
}
