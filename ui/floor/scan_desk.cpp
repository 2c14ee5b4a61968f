#include "ui/floor/scan_desk.h"

#include "ui/common/formats.h"

#include <QApplication>
#include <QWidget>

namespace chalk::ui::floor {

namespace {

QString scanText(const char* words)
{
    return QApplication::translate("ScanDesk", words);
}

void closeMenus()
{
    while (QWidget* popup = QApplication::activePopupWidget()) {
        if (!popup->close() || popup == QApplication::activePopupWidget()) {
            return;
        }
    }
}

}  // namespace

void ScanDesk::take(const QString& code)
{
    if (QApplication::activeModalWidget() != nullptr) {
        m_services.say(scanText("Close the dialog first, then scan the card again."));
        return;
    }
    const auto found = sessionWith(code);
    if (!found) {
        m_services.say(scanText("The card could not be looked up: %1").arg(found.error().message));
        return;
    }
    if (!*found) {
        m_services.say(scanText("No session has the code %1.").arg(code));
        return;
    }
    const store::NamedSession& named = **found;
    if (sessions::isCalledOff(named.session.state)) {
        m_services.say(scanText("%1 called off on %2.").arg(common::qstring(named.clientName), common::dayText(named.session.date)));
        return;
    }
    closeMenus();
    m_services.say(QString());
    m_services.goTo({.page = QStringLiteral("floor"), .client = named.session.client, .session = named.session.id});
}

store::Result<std::optional<store::NamedSession>> ScanDesk::sessionWith(const QString& code)
{
    store::SessionReader reader(m_services.database);
    auto found = reader.withCode(code.trimmed().toStdString());
    if (found && !*found) {
        return reader.withCode(code.trimmed().toUpper().toStdString());  // the lock for capitals turns a scanner's letters over
    }
    return found;
}

}  // namespace chalk::ui::floor
