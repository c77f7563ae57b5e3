#!/usr/bin/env bash
# Writes docs/reference anew from the descriptions of the calculations. A test compares the two otherwise.
set -euo pipefail
cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.."
export CROSSMEMBER_WRITE_REFERENCE=1
dotnet run --project tests/Crossmember.Architecture.Tests -c Release -- -class "*ReferenceTests" -noLogo
