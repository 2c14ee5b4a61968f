#include "ui/lock/lock_section.h"

#include "core/store/sealing.h"
#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/common/segmented_choice.h"
#include "ui/common/sentence_text.h"
#include "ui/lock/lock_desk.h"
#include "ui/lock/passphrase_field.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::lock {

namespace {

constexpr double kNameWidth = 172;  ///< pixels at a text size of 100 %

QVBoxLayout* bodyOf(common::Panel& panel)
{
    auto* body = new QVBoxLayout;
    body->setContentsMargins(18, 14, 18, 16);
    body->setSpacing(10);
    panel.body()->addLayout(body);
    return body;
}

QLabel* paragraph(const QString& words, const char* role, QWidget* parent)
{
    auto* label = new QLabel(words, parent);
    label->setWordWrap(true);
    label->setProperty("role", QLatin1String(role));
    return label;
}

QString minutesText(int minutes)
{
    return minutes == 0 ? LockSection::tr("Never") : LockSection::tr("%1 min").arg(minutes);
}

/// What else the work has to say: the texts are sealed, but the file could not be written anew.
QString failureWords(const store::StoreError& error)
{
    switch (error.kind) {
    case store::StoreError::Kind::Locked:
        return LockSection::tr("That is not the present passphrase. Nothing was changed.");
    case store::StoreError::Kind::Cancelled:
        return LockSection::tr("Stopped: nothing was changed.");
    case store::StoreError::Kind::NotThere:
    case store::StoreError::Kind::NotAStudio:
    case store::StoreError::Kind::Damaged:
    case store::StoreError::Kind::Newer:
    case store::StoreError::Kind::Older:
    case store::StoreError::Kind::CannotRead:
    case store::StoreError::Kind::CannotWrite:
    case store::StoreError::Kind::Busy:
    case store::StoreError::Kind::Refused:
    case store::StoreError::Kind::Conflict:
    case store::StoreError::Kind::Unreachable:
    case store::StoreError::Kind::NotAllowed:
    case store::StoreError::Kind::Other:
        break;
    }
    return common::sentenceText(error.message);
}

}  // namespace

LockSection::LockSection(const common::Look& look, store::Database& database, LockDesk& desk, QWidget* parent, const seal::KeyCost& cost)
    : SettingsSection(parent), m_look(look), m_database(database), m_desk(desk), m_cost(cost)
{
    addState();
    addWork();
    addLocking();
    addScope();
    connect(&m_work, &SealingWork::done, this, [this] {
        say(m_done);
        m_desk.refresh();
        refresh();
        focusFirst();
    });
    connect(&m_work, &SealingWork::failed, this, [this](const store::StoreError& error) {
        say(failureWords(error));
        m_desk.refresh();
        refresh();
        focusFirst();
    });
    connect(&m_work, &SealingWork::progressed, this, [this](int done, int of) { say(tr("%1 %2 of %3").arg(m_doing).arg(done).arg(of)); });
    LockSection::refresh();
}

LockSection::~LockSection()
{
    m_work.disconnect(this);
}

void LockSection::addState()
{
    m_panel = new common::Panel(m_look, this);
    m_panel->setTitle(tr("Passphrase"), tr("of this studio"));
    QVBoxLayout* body = bodyOf(*m_panel);
    m_state = paragraph({}, "secondary", m_panel);
    body->addWidget(m_state);
    m_present = addField(body, tr("Present passphrase"), m_presentRow);
    QWidget* row = nullptr;
    m_new = addField(body, tr("New passphrase"), row);
    m_again = addField(body, tr("The same once more"), row);
    m_understood = new QCheckBox(tr("A lost passphrase is a lost studio. I know that nobody can open it without."), m_panel);
    connect(m_understood, &QCheckBox::toggled, this, &LockSection::readFields);
    body->addWidget(m_understood);
    m_hint = paragraph({}, "muted", m_panel);
    body->addWidget(m_hint);
    column()->addWidget(m_panel);
}

PassphraseField* LockSection::addField(QVBoxLayout* in, const QString& name, QWidget*& row)
{
    row = new QWidget(m_panel);
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(10);
    auto* label = new QLabel(name, row);
    label->setProperty("role", QStringLiteral("secondary"));
    label->setMinimumWidth(qRound(m_look.theme().scaled(kNameWidth)));
    auto* field = new PassphraseField(m_look, name, row);
    line->addWidget(label);
    line->addWidget(field);
    line->addStretch(1);
    in->addWidget(row);
    connect(field, &PassphraseField::changed, this, &LockSection::readFields);
    connect(field, &PassphraseField::entered, this, [this] {
        common::ActionButton* button = m_desk.canLock() ? m_change : m_set;
        if (button->isEnabled()) {
            button->click();
        }
    });
    return field;
}

void LockSection::addWork()
{
    auto* body = qobject_cast<QVBoxLayout*>(m_panel->body()->itemAt(m_panel->body()->count() - 1)->layout());
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    m_set = new common::ActionButton(m_look, tr("Seal the studio"), m_panel);
    m_set->setKind(common::ButtonKind::Primary);
    m_set->setIconName(QStringLiteral("lock"));
    m_change = new common::ActionButton(m_look, tr("Change the passphrase"), m_panel);
    m_change->setKind(common::ButtonKind::Primary);
    m_remove = new common::ActionButton(m_look, tr("Remove the passphrase"), m_panel);
    m_remove->setKind(common::ButtonKind::Danger);
    m_stop = new common::ActionButton(m_look, tr("Stop"), m_panel);
    m_stop->setKeyText(tr("Esc"));
    for (common::ActionButton* button : {m_set, m_change, m_remove, m_stop}) {
        row->addWidget(button);
    }
    row->addStretch(1);
    body->addLayout(row);
    m_news = paragraph({}, "strong", m_panel);
    m_news->hide();
    body->addWidget(m_news);
    connect(m_set, &QPushButton::clicked, this, &LockSection::set);
    connect(m_change, &QPushButton::clicked, this, &LockSection::change);
    connect(m_remove, &QPushButton::clicked, this, &LockSection::remove);
    connect(m_stop, &QPushButton::clicked, &m_work, &SealingWork::stop);
}

void LockSection::addLocking()
{
    auto* panel = new common::Panel(m_look, this);
    panel->setTitle(tr("Locking"), tr("on this machine"));
    QVBoxLayout* body = bodyOf(*panel);
    auto* row = new QHBoxLayout;
    row->setSpacing(10);
    auto* label = new QLabel(tr("When nobody touches it"), panel);
    label->setProperty("role", QStringLiteral("secondary"));
    label->setMinimumWidth(qRound(m_look.theme().scaled(kNameWidth)));
    std::vector<common::Segment> segments;
    for (const int minutes : LockDesk::choices()) {
        segments.push_back({minutesText(minutes)});
    }
    m_minutes = new common::SegmentedChoice(tr("Lock when nobody touches it for"), segments, panel);
    m_lockNow = new common::ActionButton(m_look, tr("Lock now"), panel);
    m_lockNow->setKeyText(tr("Ctrl L"));
    row->addWidget(label);
    row->addWidget(m_minutes);
    row->addWidget(m_lockNow);
    row->addStretch(1);
    body->addLayout(row);
    body->addWidget(paragraph(tr("A locked window shows nothing of the studio. What you typed comes back when you unlock it."), "muted", panel));
    column()->addWidget(panel);
    connect(m_minutes, &common::SegmentedChoice::choiceMade, this, [this](int choice) { m_desk.setMinutes(LockDesk::choices()[static_cast<std::size_t>(choice)]); });
    connect(m_lockNow, &QPushButton::clicked, &m_desk, &LockDesk::lock);
}

void LockSection::addScope()
{
    auto* panel = new common::Panel(m_look, this);
    panel->setTitle(tr("What a passphrase seals"));
    QVBoxLayout* body = bodyOf(*panel);
    body->addWidget(paragraph(tr("Sealed: profiles, health intakes, screens, field tests, body measures, letters, clearances, cautions, goals, plans, and every "
                                 "note about a client. New backups are sealed whole."),
                              "secondary", panel));
    body->addWidget(paragraph(tr("Not sealed: names, days of birth, bookings, loads, and the numbers of a session, pain and sleep among them. Whoever has the "
                                 "file can read these. Encrypt the disk to protect them."),
                              "secondary", panel));
    body->addWidget(paragraph(tr("Backups made before the passphrase was set stay readable to whoever has them. A backup keeps the passphrase that it was made "
                                 "with."),
                              "secondary", panel));
    column()->addWidget(panel);
}

void LockSection::refresh()
{
    const bool isSealed = m_desk.canLock();
    const bool isFile = !m_database.isOnServer();
    m_state->setText(!isFile ? tr("This studio is on a server. There the roles decide who reads what, and no passphrase is set.")
                     : isSealed ? tr("The studio is sealed. It opens with its passphrase only.")
                                : tr("The studio has no passphrase. Whoever has the file can read everything in it."));
    m_presentRow->setVisible(isSealed && isFile);
    m_new->parentWidget()->setVisible(isFile);
    m_again->parentWidget()->setVisible(isFile);
    m_understood->setVisible(isFile);
    m_set->setVisible(!isSealed && isFile);
    m_change->setVisible(isSealed && isFile);
    m_remove->setVisible(isSealed && isFile);
    const auto& choices = LockDesk::choices();
    m_minutes->setChosen(static_cast<int>(std::find(choices.begin(), choices.end(), m_desk.minutes()) - choices.begin()));
    m_minutes->setEnabled(isSealed);
    m_lockNow->setEnabled(isSealed);
    readFields();
}

void LockSection::readFields()
{
    const bool isBusy = m_work.isBusy();
    const bool isLong = store::isLongEnough(m_new->text());
    const bool isSame = m_new->text() == m_again->text();
    m_new->setInvalid(!m_new->text().isEmpty() && !isLong);
    m_again->setInvalid(!m_again->text().isEmpty() && !isSame);
    m_hint->setText(!m_new->text().isEmpty() && !isLong        ? tr("%1 characters at least. Several words are easier to keep than odd letters.").arg(seal::Passphrase::kFewest)
                    : !m_again->text().isEmpty() && !isSame    ? tr("The two are not the same yet.")
                                                               : tr("Write it down and keep it away from this computer."));
    const bool isReady = isLong && isSame && m_understood->isChecked() && !isBusy;
    const bool hasPresent = !m_present->text().isEmpty();
    m_set->setEnabled(isReady);
    m_change->setEnabled(isReady && hasPresent);
    m_remove->setEnabled(hasPresent && !isBusy);
    m_stop->setVisible(isBusy);
    m_hint->setVisible(!m_database.isOnServer());
}

void LockSection::set()
{
    const seal::Passphrase passphrase = m_new->passphrase();
    begin([access = m_database.access(), cost = m_cost, passphrase](const store::Progress& progress) {
        const auto database = store::Database::open(access, store::OpenMode::MustExist);
        return database ? store::Sealing(**database, cost).set(passphrase, progress) : tl::make_unexpected(database.error());
    },
          tr("Sealing"), tr("The studio is sealed."));
}

void LockSection::change()
{
    const seal::Passphrase passphrase = m_new->passphrase();
    begin([access = m_database.access(), cost = m_cost, passphrase, present = m_present->passphrase()](const store::Progress&) {
        const auto database = store::Database::open(access, store::OpenMode::MustExist);
        return database ? store::Sealing(**database, cost).change(present, passphrase) : tl::make_unexpected(database.error());
    },
          tr("Changing"), tr("The passphrase is another one now."));
}

void LockSection::remove()
{
    begin([access = m_database.access(), present = m_present->passphrase()](const store::Progress& progress) {
        const auto database = store::Database::open(access, store::OpenMode::MustExist);
        return database ? store::Sealing(**database).remove(present, progress) : tl::make_unexpected(database.error());
    },
          tr("Opening"), tr("The passphrase is gone. Nothing is sealed any more."));
}

void LockSection::begin(SealingWork::Work work, const QString& doing, const QString& done)
{
    m_doing = doing;
    m_done = done;
    m_work.start(std::move(work));
    for (PassphraseField* field : {m_present, m_new, m_again}) {
        field->clear();
    }
    m_understood->setChecked(false);
    say(tr("%1…").arg(doing));
    readFields();
    m_stop->setFocus(Qt::OtherFocusReason);
}

void LockSection::focusFirst()
{
    if (isVisible()) {
        (m_desk.canLock() ? m_present : m_new)->setFocus(Qt::OtherFocusReason);
    }
}

void LockSection::say(const QString& words)
{
    m_news->setText(words);
    m_news->setVisible(!words.isEmpty());
}

QString LockSection::saying() const
{
    return m_news->isHidden() ? QString() : m_news->text();
}

bool LockSection::closeOrClear()
{
    if (m_work.isBusy()) {
        m_work.stop();
        return true;
    }
    return false;
}

}  // namespace chalk::ui::lock
