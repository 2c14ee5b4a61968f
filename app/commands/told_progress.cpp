#include "app/commands/told_progress.h"

#include "app/commands/stop_request.h"

namespace chalk::app {

store::Progress toldProgress(const CommandContext& context, const QString& what, int every)
{
    return [&context, what, every, told = 0](int done, int of) mutable {
        if (done / every > told) {
            told = done / every;
            context.err << done << (of > done ? QStringLiteral(" of %1 ").arg(of) : QStringLiteral(" ")) << what << '\n' << Qt::flush;
        }
        return !StopRequest::isMade();
    };
}

}  // namespace chalk::app
