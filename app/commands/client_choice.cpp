#include "app/commands/client_choice.h"

#include "core/store/client_reader.h"
#include "ui/common/formats.h"

namespace chalk::app {

std::optional<base::ClientId> chooseClient(const CommandContext& context, store::Database& database, const QString& wanted)
{
    const auto names = store::ClientReader(database).names();
    if (!names) {
        context.report(names.error());
        return std::nullopt;
    }
    std::vector<base::ClientId> exact;
    std::vector<base::ClientId> partly;
    for (const auto& [id, name] : *names) {
        const QString text = ui::common::qstring(name);
        if (QString::number(id.value()) == wanted || text.compare(wanted, Qt::CaseInsensitive) == 0) {
            exact.push_back(id);
        }
        if (!wanted.isEmpty() && text.contains(wanted, Qt::CaseInsensitive)) {
            partly.push_back(id);
        }
    }
    const auto& meant = exact.empty() ? partly : exact;
    if (meant.size() == 1) {
        return meant.front();
    }
    context.refuse(meant.empty() ? QStringLiteral("there is no client %1").arg(wanted)
                                 : QStringLiteral("%1 clients are meant by %2; name one by its whole name or its id").arg(meant.size()).arg(wanted));
    return std::nullopt;
}

}  // namespace chalk::app
