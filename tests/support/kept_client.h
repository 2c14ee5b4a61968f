#pragma once

#include "core/studio/studio_document.h"

namespace chalk::test {

/// Gives the first client of the small studio everything that onboarding keeps: each kind of form, two letters, planned lifts; and the studio
/// a template and limits of its own.
void addKept(studio::StudioDocument& document);

}  // namespace chalk::test
