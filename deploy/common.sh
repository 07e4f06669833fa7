# Shared by the commands of deploy/: saying what happens, and the virtual environment. Sourced, not run.

say() { printf '\n== %s\n' "$*"; }
fail() { printf '\nStopped: %s\n' "$*" >&2; exit 1; }

# The first Python of at least 3.11 that can make environments, the distribution's own before others on the PATH: it is
# kept up with the machine, and built with what a profile taught, which one built by hand seldom is.
find_python() {
  local candidate
  for candidate in "${PYTHON:-}" /usr/bin/python3 python3.14 python3.13 python3.12 python3.11 python3; do
    [ -n "$candidate" ] && command -v "$candidate" >/dev/null 2>&1 || continue
    "$candidate" -c 'import ensurepip, sys; sys.exit(sys.version_info < (3, 11))' 2>/dev/null || continue
    echo "$candidate"
    return
  done
  fail "Python 3.11 or newer is needed. Debian/Ubuntu: apt-get install python3 python3-venv." \
    "macOS: install it from python.org or with your package manager."
}

# install_locked FOLDER LOCK…: exactly these files and no others; pip compares each with its hash. Nothing is fetched
# besides: what has no wheel is built with the tools that stand in the lock "build", which goes first.
install_locked() {
  local folder=$1 name
  shift
  for name in "$@"; do
    "$folder/bin/python" -m pip install --quiet --disable-pip-version-check --no-deps --require-hashes \
      --no-build-isolation --use-pep517 --requirement "deploy/locks/$name.txt" ||
      fail "the packages of deploy/locks/$name.txt could not be installed; is the network there?"
  done
}

# install_compact FOLDER: what makes the phone's files smaller, where there are packages for the machine.
install_compact() {
  "$1/bin/python" -m pip install --quiet --disable-pip-version-check --no-deps --require-hashes --only-binary :all: \
    --requirement deploy/locks/compact.txt 2>/dev/null ||
    say "Without the packages that make the phone's files smaller: there are none for this machine"
}

# check_environment FOLDER: that what was installed is all that it needs.
check_environment() {
  "$1/bin/python" -m pip --disable-pip-version-check check ||
    fail "deploy/locks/ is behind pyproject.toml: run deploy/lock"
}

# make_environment FOLDER serve|test: a virtual environment that runs this checkout, remade when its recipe changed.
make_environment() {
  local folder=$1 what=$2 python stamp
  python=$(find_python)
  stamp=$(cat pyproject.toml deploy/common.sh deploy/locks/*.txt | cksum | tr ' ' '-')
  if [ "$(cat "$folder/.stamp" 2>/dev/null)" = "$stamp" ]; then
    say "Python environment $folder is up to date"
    return
  fi
  say "Making the Python environment $folder with $("$python" --version)"
  "$python" -m venv --clear "$folder" ||
    fail "no virtual environment could be made. Debian/Ubuntu: apt-get install python3-venv"
  install_locked "$folder" build "$what"
  [ "$what" = test ] || install_compact "$folder"
  "$folder/bin/python" -m pip install --quiet --disable-pip-version-check --no-deps --no-index --no-build-isolation \
    --editable . || fail "the package could not be installed"
  check_environment "$folder"
  echo "$stamp" > "$folder/.stamp"
}
