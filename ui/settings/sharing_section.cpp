#include "ui/settings/sharing_section.h"

#include "core/store/studio_reader.h"
#include "ui/common/connection_words.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"

#include <QDir>
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

SharingSection::SharingSection(const common::Look& look, store::Database& database, QWidget* parent)
    : SettingsSection(parent), m_look(look), m_database(database)
{
    auto* studio = new common::Panel(look, this);
    studio->setTitle(tr("Where this studio lives"));
    m_place = addLine(*studio, database.isOnServer() ? tr("Server") : tr("File"));
    m_shared = addLine(*studio, tr("Shared"));
    column()->addWidget(studio);
    auto* people = new common::Panel(look, this);
    people->setTitle(tr("Coaches and roles"));
    m_who = addLine(*people, tr("Here works"));
    m_role = addLine(*people, tr("Role"));
    m_coaches = addLine(*people, tr("Coaches"));
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

void SharingSection::refresh()
{
    m_place->setText(m_database.isOnServer() ? m_database.target() : QDir::toNativeSeparators(m_database.target()));
    m_shared->setText(m_database.isOnServer() ? tr("Several coaches at once. What others change is shown as it happens.")
                                              : tr("One machine. Two windows on this file see what the other one changed after a few seconds."));
    QStringList names;
    QString who = tr("Nobody said");
    if (const auto coaches = store::StudioReader(m_database).coaches()) {
        for (const clients::Coach& coach : *coaches) {
            names.append(common::qstring(coach.name));
            who = coach.id == m_database.author() ? names.back() : who;
        }
    }
    m_who->setText(who);
    m_role->setText(reachOf(m_database.role()));
    m_coaches->setText(names.isEmpty() ? tr("None yet") : names.join(QStringLiteral(", ")));
}

QStringList SharingSection::words() const
{
    return {m_place->text(), m_shared->text(), m_who->text(), m_role->text(), m_coaches->text()};
}

}  // namespace chalk::ui::settings
