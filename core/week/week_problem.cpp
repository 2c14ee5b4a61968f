#include "core/week/week_problem.h"

namespace chalk::week {

std::string_view keyOf(RecoveryKind kind)
{
    switch (kind) {
        case RecoveryKind::Hours: return "hours";
        case RecoveryKind::RestDay: return "restDay";
    }
    return {};
}

}  // namespace chalk::week
