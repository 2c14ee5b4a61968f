#pragma once

#include "core/studio/studio_document.h"

namespace chalk::exchange {

using studio::DocumentClient;
using studio::DocumentDecision;
using studio::DocumentEvent;
using studio::DocumentForm;
using studio::DocumentLetter;
using studio::DocumentLift;
using studio::DocumentTest;
using studio::ErasedSession;
using studio::StudioDocument;
using studio::StudioEquipment;
using studio::slideTo;

}  // namespace chalk::exchange
