#include "ui/onboarding/profile_fields.h"

#include "ui/common/day_entry.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/segmented_choice.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSignalBlocker>
#include <QSpinBox>

namespace chalk::ui::onboarding {

namespace {

constexpr int kTextLines = 3;
constexpr auto kGiven = "given";  ///< property of a field: what it was given last

std::string trimmedUtf8(const QString& text)
{
    return text.trimmed().toStdString();
}

/// Whether a field is to be given `value`: not where the person is in it, unless it is something else than what the field was given last. That
/// was written by somebody else, or what is typed there was written down.
bool takes(QWidget& field, const QString& value)
{
    const bool isNews = field.property(kGiven).toString() != value;
    field.setProperty(kGiven, value);
    return !field.hasFocus() || isNews;
}

void give(QLineEdit& field, const std::string& value)
{
    const QString text = common::qstring(value);
    if (takes(field, text) && field.text().trimmed() != text) {
        field.setText(text);
    }
}

void give(QPlainTextEdit& field, const std::string& value)
{
    const QString text = common::qstring(value);
    if (takes(field, text) && field.toPlainText().trimmed() != text) {
        const QSignalBlocker quiet(field);
        field.setPlainText(text);
    }
}

QSpinBox* numberField(QWidget* parent, int least, int most, int step)
{
    auto* field = new QSpinBox(parent);
    field->setRange(least, most);
    field->setSingleStep(step);
    field->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    field->setKeyboardTracking(false);
    return field;
}

}  // namespace

ProfileFields::ProfileFields(const common::Look& look, QWidget* parent) : FieldColumn(look, parent)
{
    addPerson();
    addConsent();
    addTraining();
    addContacts();
}

QLineEdit* ProfileFields::line(const QString& name, const QString& hint)
{
    auto* field = new QLineEdit(this);
    field->setPlaceholderText(hint);
    addField(name, field);
    connect(field, &QLineEdit::textEdited, this, &ProfileFields::typed);
    connect(field, &QLineEdit::editingFinished, this, &ProfileFields::settled);
    return field;
}

QPlainTextEdit* ProfileFields::text(const QString& name)
{
    auto* field = new QPlainTextEdit(this);
    field->setTabChangesFocus(true);
    field->setFixedHeight(field->fontMetrics().lineSpacing() * kTextLines + 22);
    addField(name, field);
    connect(field, &QPlainTextEdit::textChanged, this, &ProfileFields::typed);
    return field;
}

void ProfileFields::addPerson()
{
    addHeading(tr("Person"));
    m_name = line(tr("Name"), tr("First and last name"));
    m_pronouns = line(tr("Pronouns"), tr("If wanted"));
    m_birth = line(tr("Birth date"), tr("5 Mar 1974"));
    m_sex = new common::SegmentedChoice(tr("Sex, for norms only"), {{tr("Not given")}, {tr("Female")}, {tr("Male")}}, this);
    addField(tr("Sex, for norms"), m_sex);
    setNote(m_sex, tr("Some published norms and formulas are printed by sex. It is used for nothing else."));
    connect(m_sex, &common::SegmentedChoice::choiceMade, this, &ProfileFields::settled);
    m_coach = new QComboBox(this);
    addField(tr("Coach"), m_coach);
    connect(m_coach, &QComboBox::activated, this, &ProfileFields::settled);
}

void ProfileFields::addContacts()
{
    addHeading(tr("Contacts"));
    m_phone = line(tr("Phone"));
    m_email = line(tr("Email"));
    m_emergencyName = line(tr("In an emergency"), tr("Who to call"));
    m_emergencyPhone = line(tr("Their phone"));
}

void ProfileFields::addTraining()
{
    addHeading(tr("Training"));
    m_goal = text(tr("Goal, in own words"));
    m_history = text(tr("Training so far"));
    m_sessions = numberField(this, 1, 7, 1);
    addField(tr("Sessions a week"), m_sessions);
    m_minutes = numberField(this, 15, 240, 15);
    m_minutes->setSuffix(tr(" min"));
    addField(tr("Length"), m_minutes);
    m_group = new common::SegmentedChoice(tr("Kind of session"), {{tr("One-to-one")}, {tr("Small group")}}, this);
    addField(tr("Kind"), m_group);
    m_unit = new common::SegmentedChoice(tr("Unit of loads"), {{tr("kg")}, {tr("lb")}}, this);
    addField(tr("Loads in"), m_unit);
    for (QSpinBox* number : {m_sessions, m_minutes}) {
        connect(number, &QSpinBox::valueChanged, this, &ProfileFields::settled);
    }
    for (common::SegmentedChoice* choice : {m_group, m_unit}) {
        connect(choice, &common::SegmentedChoice::choiceMade, this, &ProfileFields::settled);
    }
}

void ProfileFields::addConsent()
{
    addHeading(tr("Consent"));
    m_consent = new QCheckBox(tr("Agrees that health data is kept"), this);
    addField(tr("Client"), m_consent);
    m_guardian = line(tr("Guardian"), tr("Name"));
    m_guardianConsent = new QCheckBox(tr("The guardian agrees too"), this);
    addField(tr("Guardian’s consent"), m_guardianConsent);
    connect(m_consent, &QCheckBox::clicked, this, [this](bool isOn) {
        m_consentOn = isOn ? std::optional(m_today) : std::nullopt;
        Q_EMIT settled();
    });
    connect(m_guardianConsent, &QCheckBox::clicked, this, [this](bool isOn) {
        m_guardianConsentOn = isOn ? std::optional(m_today) : std::nullopt;
        Q_EMIT settled();
    });
}

void ProfileFields::setCoaches(const std::vector<clients::Coach>& coaches)
{
    m_coach->clear();
    for (const clients::Coach& coach : coaches) {
        m_coach->addItem(common::qstring(coach.name), static_cast<qlonglong>(coach.id.value()));
    }
}

void ProfileFields::setEntry(const ProfileEntry& entry, base::Date today)
{
    const clients::Client& client = entry.client;
    const clients::Profile& profile = entry.profile;
    m_today = today;
    give(*m_name, client.name);
    give(*m_pronouns, profile.pronouns);
    const QString born = client.birthDate ? common::entryOfDay(*client.birthDate) : QString();
    if (takes(*m_birth, born) && faultOfBirth().isEmpty() && (!m_birth->hasFocus() || birth() != client.birthDate)) {
        m_birth->setText(born);
    }
    m_sex->setChosen(static_cast<int>(profile.sex));
    m_coach->setCurrentIndex(m_coach->findData(static_cast<qlonglong>(client.coach.value())));
    give(*m_phone, profile.contact.phone);
    give(*m_email, profile.contact.email);
    give(*m_emergencyName, profile.emergency.name);
    give(*m_emergencyPhone, profile.emergency.phone);
    give(*m_goal, client.goal);
    give(*m_history, profile.trainingHistory);
    const QSignalBlocker quietSessions(m_sessions);
    const QSignalBlocker quietMinutes(m_minutes);
    m_sessions->setValue(client.sessionsPerWeek);
    m_minutes->setValue(profile.sessionMinutes);
    m_group->setChosen(profile.isInGroup ? 1 : 0);
    m_unit->setChosen(client.unit == base::MassUnit::Pound ? 1 : 0);
    m_consentOn = profile.consentOn;
    m_consent->setChecked(profile.consentOn.has_value());
    give(*m_guardian, profile.guardian);
    m_guardianConsentOn = profile.guardianConsentOn;
    m_guardianConsent->setChecked(profile.guardianConsentOn.has_value());
    review(today);
}

void ProfileFields::forgetTyping()
{
    const QSignalBlocker isSilent(this);
    for (QLineEdit* field : {m_name, m_pronouns, m_birth, m_phone, m_email, m_emergencyName, m_emergencyPhone, m_guardian}) {
        field->clear();
        field->clearFocus();
    }
    for (QPlainTextEdit* field : {m_goal, m_history}) {
        field->clear();
        field->clearFocus();
    }
}

std::optional<base::Date> ProfileFields::birth() const
{
    return common::dayOfEntry(m_birth->text());
}

ProfileEntry ProfileFields::entryOn(const ProfileEntry& base) const
{
    ProfileEntry entry = base;
    clients::Client& client = entry.client;
    clients::Profile& profile = entry.profile;
    if (const std::string name = trimmedUtf8(m_name->text()); !name.empty()) {
        client.name = name;
    }
    if (const auto read = birth(); read && !clients::faultOfBirth(*read, m_today)) {
        client.birthDate = read;
    } else if (m_birth->text().trimmed().isEmpty()) {
        client.birthDate.reset();
    }
    if (m_coach->currentIndex() >= 0) {
        client.coach = base::CoachId(m_coach->currentData().toLongLong());
    }
    client.goal = trimmedUtf8(m_goal->toPlainText());
    client.sessionsPerWeek = m_sessions->value();
    client.unit = m_unit->chosen() == 1 ? base::MassUnit::Pound : base::MassUnit::Kilogram;
    profile.pronouns = trimmedUtf8(m_pronouns->text());
    profile.sex = static_cast<clients::NormSex>(std::max(0, m_sex->chosen()));
    profile.contact.phone = trimmedUtf8(m_phone->text());
    profile.contact.email = trimmedUtf8(m_email->text());
    profile.emergency.name = trimmedUtf8(m_emergencyName->text());
    profile.emergency.phone = trimmedUtf8(m_emergencyPhone->text());
    profile.trainingHistory = trimmedUtf8(m_history->toPlainText());
    profile.sessionMinutes = m_minutes->value();
    profile.isInGroup = m_group->chosen() == 1;
    profile.consentOn = m_consentOn;
    profile.guardian = trimmedUtf8(m_guardian->text());
    profile.guardianConsentOn = m_guardianConsentOn;
    return entry;
}

bool ProfileFields::review(base::Date today)
{
    const bool hasName = !m_name->text().trimmed().isEmpty();
    const auto read = birth();
    const QString birthFault = faultOfBirth();
    setFault(m_name, hasName || m_isNameOnly || m_name->hasFocus() ? QString() : tr("A name is needed."));
    setFault(m_birth, read || !m_birth->hasFocus() ? birthFault : QString());
    setNote(m_birth, read && birthFault.isEmpty() ? tr("%1 · %2 years old").arg(common::longDayText(*read) + QLatin1Char(' ') + QString::number(static_cast<int>(read->ymd().year())))
                                          .arg(base::ageOn(*read, today))
                                    : QString());
    setNote(m_consent, m_consentOn ? tr("Given on %1. Without it nothing about health is kept.").arg(common::entryOfDay(*m_consentOn))
                                   : tr("Without it nothing about health is kept, and the health intake waits."));
    showGuardian(today);
    return hasName && birthFault.isEmpty();
}

QString ProfileFields::faultOfBirth() const
{
    const auto read = birth();
    if (m_birth->text().trimmed().isEmpty() || (read && !clients::faultOfBirth(*read, m_today))) {
        return {};
    }
    if (!read) {
        return tr("There is no such day. Write it like 5 Mar 1974 or 5.3.1974.");
    }
    return *read > m_today ? tr("This day is still to come.") : tr("That is more than 120 years ago.");
}

void ProfileFields::showGuardian(base::Date today)
{
    const auto read = birth();
    const bool isMinor = read && !clients::faultOfBirth(*read, today) && clients::isMinorOn(*read, today);
    setFieldVisible(m_guardian, isMinor);
    setFieldVisible(m_guardianConsent, isMinor);
    setNote(m_guardianConsent, !isMinor               ? QString()
                               : m_guardianConsentOn ? tr("Given on %1.").arg(common::entryOfDay(*m_guardianConsentOn))
                                                     : tr("Under 18 a guardian has to agree too. Local law may ask for more."));
}

void ProfileFields::takeFocus()
{
    QWidget* first = m_goal;
    if (m_name->text().trimmed().isEmpty()) {
        first = m_name;
    } else if (m_birth->text().trimmed().isEmpty()) {
        first = m_birth;
    } else if (!m_consentOn) {
        first = m_consent;
    }
    first->setFocus(Qt::OtherFocusReason);
}

void ProfileFields::setNameOnly(bool isNameOnly)
{
    m_isNameOnly = isNameOnly;
    for (QWidget* field : findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
        if (field != m_name && field->focusPolicy() != Qt::NoFocus) {
            field->setEnabled(!isNameOnly);
        }
    }
    for (common::SegmentedChoice* choice : {m_sex, m_group}) {
        choice->setEnabled(!isNameOnly);
    }
    m_unit->setEnabled(!isNameOnly && m_unit->isEnabled());
}

void ProfileFields::setUnitLocked(bool isLocked)
{
    m_unit->setEnabled(!isLocked);
    setNote(m_unit, isLocked ? tr("Lifts that run keep the unit that they began in.") : QString());
}

}  // namespace chalk::ui::onboarding
