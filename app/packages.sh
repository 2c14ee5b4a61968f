# Sourced by app/run and tests/run: which Debian packages are needed for what, and how those that are missing come in.

# A compiler, the build and the libraries' headers.
BUILD_PACKAGES="g++ cmake ninja-build ccache lld pkg-config qt6-base-dev libqt6opengl6-dev qt6-charts-dev qt6-svg-dev
  libspdlog-dev libfmt-dev libexpected-dev libqrencode-dev libsqlite3-dev libsodium-dev"
# What Qt loads while it runs, which nothing links to: the database drivers and the icons.
RUN_PACKAGES="libqt6sql6-sqlite libqt6sql6-psql libqt6svg6"
# The same for a display that is Wayland's alone.
WAYLAND_PACKAGES="qt6-wayland"
# Test libraries, a database server, and what looks at what was made: calendars, PDF text, codes on cards, a window on a display of its own and its keys.
TEST_PACKAGES="libgtest-dev libgmock-dev librapidcheck-dev libical-dev python3 poppler-utils postgresql
  zbar-tools xvfb xauth xdotool"
# The fuzzers are built by clang.
FUZZ_PACKAGES="clang-14 libclang-rt-14-dev"

# install_missing WHY PACKAGE ...: installs what is missing by apt, and says so. Nothing is done, and nobody asked, where all is there.
install_missing() {
  local why=$1 installed missing="" package
  shift
  if ! command -v dpkg-query >/dev/null; then
    echo "This is no Debian: see to it yourself that these are there, $why: $*"
    return 0
  fi
  installed=" $(dpkg-query -W -f '${db:Status-Abbrev}|${Package} ' "$@" 2>/dev/null || true)"
  for package in "$@"; do
    case "$installed" in
      *" ii |$package "*) ;;
      *) missing="$missing $package" ;;
    esac
  done
  [ -n "$missing" ] || return 0

  echo "These Debian packages are missing, $why:"
  echo "$missing" | fold -s -w 100 | sed 's/^ */    /'
  local apt="apt-get -o DPkg::Lock::Timeout=900"
  if [ "$(id -u)" -ne 0 ]; then
    if ! command -v sudo >/dev/null; then
      echo "There is no sudo here. As root, run: apt-get update && apt-get install --no-install-recommends$missing" >&2
      return 1
    fi
    echo "They are installed by apt-get, through sudo: it may ask for your password."
    apt="sudo env DEBIAN_FRONTEND=noninteractive $apt"
  else
    echo "They are installed by apt-get."
    apt="env DEBIAN_FRONTEND=noninteractive $apt"
  fi
  $apt -qq update || echo "The list of packages could not be brought up to date; going on with the one that is there." >&2
  # shellcheck disable=SC2086 # a list of words
  $apt -qq install -y --no-install-recommends $missing </dev/null
}
