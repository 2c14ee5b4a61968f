#include "ui/settings/sharing_section.h"

#include "core/store/server_logins.h"
#include "core/store/studio_reader.h"
#include "ui/common/action_button.h"
#include "ui/common/connection_words.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/settings/move_dialog.h"

#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace chalk::ui::settings {

namespace {

constexpr double kSharingNames = 148;  ///< pixels at a text size of 100 %

/// What a role reaches, one sentence.
QString reachOf(store::Role role)
{
    switch (role) {
    case store::Role::Owner: return SharingSection::tr("Owner: everything.");
    case store::Role::Coach: return SharingSection::tr("Coach: everything but logins, erasure and what holds for the whole studio.");
    case store::Role::FrontDesk: return SharingSection::tr("Front desk: names, bookings and hours. Nothing of anybody’s health and training is shown.");
    }
    return {};
}

}  // namespace

SharingSection::SharingSection(const common::Look& look, store::Database& database, common::Dialogs& dialogs, QWidget* parent)
    : SettingsSection(parent), m_look(look), m_database(database), m_dialogs(dialogs)
{
    auto* studio = new common::Panel(look, this);
    studio->setTitle(tr("Where this studio lives"));
    m_place = addLine(*studio, database.isOnServer() ? tr("Server") : tr("File"));
    m_shared = addLine(*studio, tr("Shared"));
    if (database.may(store::Right::ChangeStudio)) {
        addMove(*studio);
    }
    column()->addWidget(studio);
    auto* people = new common::Panel(look, this);
    people->setTitle(tr("Coaches and roles"));
    m_who = addLine(*people, tr("Here works"));
    m_role = addLine(*people, tr("Role"));
    m_coaches = addLine(*people, tr("Coaches"));
    if (database.isOnServer() && database.may(store::Right::SeeLogins)) {
        m_logins = addLine(*people, tr("May sign in"));
        m_connected = addLine(*people, tr("Connected now"));
    }
    column()->addWidget(people);
    SharingSection::refresh();
}

QLabel* SharingSection::addLine(common::Panel& panel, const QString& name)
{
    auto* row = new QHBoxLayout;
    row->setContentsMargins(18, 6, 18, 10);
    row->setSpacing(10);
    auto* label = new QLabel(name, &panel);
    label->setProperty("role", QStringLiteral("secondary"));
    label->setMinimumWidth(qRound(m_look.theme().scaled(kSharingNames)));
    label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto* value = new QLabel(&panel);
    value->setTextFormat(Qt::PlainText);
    value->setWordWrap(true);
    value->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    value->setAccessibleName(name);
    row->addWidget(label);
    row->addWidget(value, 1);
    panel.body()->addLayout(row);
    return value;
}

void SharingSection::addMove(common::Panel& panel)
{
    auto* button = new common::ActionButton(m_look, m_database.isOnServer() ? tr("Move to a file…") : tr("Move to a server…"), &panel);
    auto* words = new QLabel(m_database.isOnServer() ? tr("The whole studio, without its logins, in one file on this machine.")
                                                     : tr("Several coaches work in one studio at the same time, each with a login."),
                             &panel);
    words->setWordWrap(true);
    words->setProperty("role", QStringLiteral("muted"));
    auto* row = new QHBoxLayout;
    row->setContentsMargins(18, 4, 18, 14);
    row->setSpacing(12);
    row->addWidget(button);
    row->addWidget(words, 1);
    panel.body()->addLayout(row);
    connect(button, &QPushButton::clicked, this, &SharingSection::move);
}

void SharingSection::move()
{
    const MoveTarget target = m_database.isOnServer() ? MoveTarget::File : MoveTarget::Server;
    MoveDialog dialog({m_look, m_dialogs, m_database.access(), m_database.vault().isSealed()}, target, window());
    dialog.exec();
}

void SharingSection::refresh()
{
    m_place->setText(m_database.isOnServer() ? m_database.target() : QDir::toNativeSeparators(QFileInfo(m_database.target()).absoluteFilePath()));
    m_shared->setText(m_database.isOnServer() ? tr("Several coaches at once. What others change is shown as it happens.")
                                              : tr("One machine. Two windows on this file see what the other one changed after a few seconds."));
    QStringList names;
    QString who = tr("Nobody named");
    store::StudioReader reader(m_database);
    for (const clients::Coach& coach : reader.coaches().value_or(std::vector<clients::Coach>())) {
        names.append(common::qstring(coach.name));
    }
    for (const clients::Coach& somebody : reader.everybody().value_or(std::vector<clients::Coach>())) {
        who = somebody.id == m_database.author() ? common::qstring(somebody.name) : who;
    }
    m_who->setText(who);
    m_role->setText(reachOf(m_database.role()));
    m_coaches->setText(names.isEmpty() ? tr("None yet") : names.join(QStringLiteral(", ")));
    refreshLogins();
}

void SharingSection::refreshLogins()
{
    if (m_logins == nullptr) {
        return;
    }
    store::ServerLogins logins(m_database);
    const auto list = logins.list();
    QStringList lines;
    for (const store::ServerLogin& login : list.value_or(std::vector<store::ServerLogin>())) {
        const QString name = common::qstring(login.coachName);
        lines.append(tr("%1, %2, as %3").arg(name.isEmpty() ? tr("Nobody in particular") : name, common::roleName(login.role), login.name));
    }
    const QString nobody = tr("Nobody yet: chalkrung server --add-coach gives a login");
    m_logins->setText(!list ? list.error().message : lines.isEmpty() ? nobody : lines.join(QLatin1Char('\n')));
    const auto connected = logins.connected();
    m_connected->setText(connected ? connected->join(QStringLiteral(", ")) : connected.error().message);
}

QStringList SharingSection::words() const
{
    QStringList words{m_place->text(), m_shared->text(), m_who->text(), m_role->text(), m_coaches->text()};
    if (m_logins != nullptr) {
        words << m_logins->text() << m_connected->text();
    }
    return words;
}

}  // namespace chalk::ui::settings
