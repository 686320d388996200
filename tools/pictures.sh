#!/bin/sh
# Takes the pictures of docs/pages.md anew: starts the real server and goes through every page in
# Chromium. Takes about two minutes, most of them to build.
set -eu
cd "$(dirname "$0")/.."
exec mvn -B -ntp -q -Dfandown.quick -pl core,browser,app test -Dtest=PagePicturesTest \
    -Dsurefire.failIfNoSpecifiedTests=false -Dfandown.write=true "$@"
