#include "ui/settings/author_section.h"

#include "core/store/studio_reader.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"

#include <QComboBox>
#include <QCryptographicHash>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QSettings>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace chalk::ui::settings {

namespace {

/// A key of the studio's own: paths have letters that keys must not have.
QString authorKey(const store::Database& database)
{
    const QByteArray place = QFileInfo(database.target()).absoluteFilePath().toUtf8();
    return QStringLiteral("author/%1").arg(QString::fromLatin1(QCryptographicHash::hash(place, QCryptographicHash::Sha256).toHex().left(16)));
}

std::vector<clients::Coach> coachesOf(store::Database& database)
{
    return store::StudioReader(database).coaches().value_or(std::vector<clients::Coach>());
}

}  // namespace

base::CoachId keptAuthor(QSettings& settings, store::Database& database)
{
    const base::CoachId kept(settings.value(authorKey(database), 0).toLongLong());
    for (const clients::Coach& coach : coachesOf(database)) {
        if (coach.id == kept) {
            return kept;
        }
    }
    return {};
}

AuthorSection::AuthorSection(const common::Look& look, store::Database& database, QSettings& settings, QWidget* parent)
    : SettingsSection(parent), m_database(database), m_settings(settings), m_who(new QComboBox(this))
{
    auto* panel = new common::Panel(look, this);
    panel->setTitle(tr("Who works here"), tr("on this machine"));
    auto* rows = new QVBoxLayout;
    rows->setContentsMargins(18, 12, 18, 14);
    rows->setSpacing(10);
    m_who->setAccessibleName(tr("Who works here"));
    auto* row = new QHBoxLayout;
    row->addWidget(m_who);
    row->addStretch(1);
    rows->addLayout(row);
    auto* why = new QLabel(tr("What is done from now on is written down under this name: in the history of a client and of the studio."), panel);
    why->setWordWrap(true);
    why->setProperty("role", QStringLiteral("secondary"));
    rows->addWidget(why);
    panel->body()->addLayout(rows);
    column()->addWidget(panel);
    connect(m_who, &QComboBox::currentIndexChanged, this, &AuthorSection::choose);
    AuthorSection::refresh();
}

AuthorSection::~AuthorSection()
{
    m_who->disconnect(this);
}

void AuthorSection::refresh()
{
    const QSignalBlocker blocker(m_who);
    m_who->clear();
    m_who->addItem(tr("Nobody named"), QVariant::fromValue<qlonglong>(0));
    for (const clients::Coach& coach : coachesOf(m_database)) {
        m_who->addItem(common::qstring(coach.name), QVariant::fromValue<qlonglong>(coach.id.value()));
    }
    m_who->setCurrentIndex(std::max(0, m_who->findData(QVariant::fromValue<qlonglong>(m_database.author().value()))));
}

void AuthorSection::choose(int index)
{
    const qlonglong id = m_who->itemData(index).toLongLong();
    m_settings.setValue(authorKey(m_database), id);
    m_database.setAuthor(base::CoachId(id));
}

}  // namespace chalk::ui::settings
