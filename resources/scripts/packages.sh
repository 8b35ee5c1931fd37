# shellcheck shell=bash
# The Debian packages Sheerlay needs, and the one way they are asked for. Sourced by app/run and tests/run.

# shellcheck disable=SC2034  # read by the scripts that source this file
SHEERLAY_PACKAGES_BUILD=(
    g++ cmake ninja-build ccache lld
    qt6-base-dev qt6-tools-dev qt6-l10n-tools qt6-tools-dev-tools libqt6opengl6-dev qt6-svg-dev libgl1-mesa-dri
    libocct-foundation-dev libocct-modeling-data-dev libocct-modeling-algorithms-dev
    libocct-ocaf-dev libocct-visualization-dev libocct-data-exchange-dev
    libtbb-dev libfreetype-dev libfontconfig-dev
    libeigen3-dev coinor-libclp-dev pkg-config libspdlog-dev nlohmann-json3-dev libtomlplusplus-dev libpugixml-dev libcli11-dev
    fonts-inter fonts-dejavu-core qt6-translations-l10n
)
# shellcheck disable=SC2034
SHEERLAY_PACKAGES_TEST=(
    catch2 libbenchmark-dev libgeographiclib-dev xvfb xauth openbox xdotool imagemagick poppler-utils
    python3 python3-numpy python3-scipy python3-ezdxf clang-format-14
)
# shellcheck disable=SC2034  # tests/run --slow only
SHEERLAY_PACKAGES_SLOW=(libcgal-dev)

# say TEXT… : a message to the person at the terminal; standard output is kept for data.
say() { printf '%s\n' "$*" >&2; }

# missingPackages NAME… : prints the names that are not installed, one per line.
missingPackages() {
    local name
    for name in "$@"; do
        if [[ "$(dpkg-query -W -f '${db:Status-Status}' "$name" 2>/dev/null)" != installed ]]; then
            printf '%s\n' "$name"
        fi
    done
}

# needPackages NAME… : installs what is missing; returns 1 when it can't. Touches the network only if something is missing.
needPackages() {
    if ! command -v dpkg-query >/dev/null; then
        say "This is no Debian system, so the packages can't be looked up; going on with what is there."
        return 0
    fi
    local missing=() asRoot=()
    mapfile -t missing < <(missingPackages "$@")
    if ((${#missing[@]} == 0)); then
        return 0
    fi
    if ((EUID != 0)); then
        if ! command -v sudo >/dev/null; then
            say "These Debian packages are missing: ${missing[*]}"
            say "Neither root nor sudo is at hand. Ask for: apt-get install --no-install-recommends ${missing[*]}"
            return 1
        fi
        asRoot=(sudo)
        say "sudo is used for one thing: to install Debian packages."
    fi
    say "Installing ${#missing[@]} missing Debian packages: ${missing[*]}"
    if ! "${asRoot[@]}" apt-get update -q >&2; then
        say "The package lists could not be refreshed; trying with the ones that are there."
    fi
    if ! "${asRoot[@]}" env DEBIAN_FRONTEND=noninteractive \
        apt-get install -y -q --no-install-recommends "${missing[@]}" >&2; then
        say "The packages could not be installed. Needed: ${missing[*]}"
        return 1
    fi
}
