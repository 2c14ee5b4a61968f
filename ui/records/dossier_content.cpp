#include "ui/records/dossier_content.h"

#include "core/store/change_history.h"
#include "core/store/client_forms.h"
#include "core/store/decision_reader.h"
#include "core/store/plan_reader.h"
#include "core/store/studio_reader.h"
#include "ui/board/client_presenter.h"
#include "ui/board/log_row.h"
#include "ui/common/check_in_words.h"
#include "ui/common/day_entry.h"
#include "ui/common/direction_words.h"
#include "ui/common/formats.h"
#include "ui/common/health_words.h"
#include "ui/history/history_words.h"
#include "ui/common/report_words.h"

#include <QCoreApplication>
#include <QJsonArray>

namespace chalk::ui::records {

namespace {

using common::qstring;

QString dossierText(const char* text)
{
    return QCoreApplication::translate("Dossier", text);
}

/// Adds an entry where there is something to say.
void addEntry(DossierPart& part, const QString& name, const QString& text)
{
    if (!text.isEmpty()) {
        part.entries.emplace_back(name, text);
    }
}

QString dayOf(const std::optional<base::Date>& day)
{
    return day ? common::entryOfDay(*day) : QString();
}

/// The fields of a form in words: `chair stand: stands 14; arms used no`. What has a name of its own begins with it: `knees follow toes: partly`.
QString plainText(const QJsonValue& value)
{
    if (value.isBool()) {
        return value.toBool() ? dossierText(QT_TRANSLATE_NOOP("Dossier", "yes")) : dossierText(QT_TRANSLATE_NOOP("Dossier", "no"));
    }
    QStringList parts;
    if (value.isArray()) {
        for (const QJsonValue& item : value.toArray()) {
            parts.append(plainText(item));
        }
        return parts.join(QStringLiteral(", "));
    }
    if (!value.isObject()) {
        return value.isString() ? value.toString().replace(QLatin1Char('_'), QLatin1Char(' ')) : value.toVariant().toString();
    }
    QJsonObject object = value.toObject();
    if (object.size() == 1 && object.contains(QLatin1String("mark"))) {
        return plainText(object.value(QLatin1String("mark")));
    }
    for (const QLatin1String naming : {QLatin1String("pattern"), QLatin1String("key")}) {
        if (object.size() > 1 && object.value(naming).isString()) {
            const QString name = plainText(object.take(naming));
            return QStringLiteral("%1: %2").arg(name, plainText(object));
        }
    }
    for (auto field = object.begin(); field != object.end(); ++field) {
        const QString text = plainText(field.value());
        if (!text.isEmpty()) {
            const bool isDeep = field.value().isObject();
            parts.append(QStringLiteral("%1%2 %3").arg(QString(field.key()).replace(QLatin1Char('_'), QLatin1Char(' ')), isDeep ? QStringLiteral(":") : QString(), text));
        }
    }
    return parts.join(QStringLiteral("; "));
}

DossierPart personPart(const board::ClientCase& about, const clients::Profile& profile)
{
    DossierPart part{dossierText(QT_TRANSLATE_NOOP("Dossier", "You")), {}};
    const clients::Client& client = about.client;
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Name")), qstring(client.name));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Born")), dayOf(client.birthDate));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Pronouns")), qstring(profile.pronouns));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Phone")), qstring(profile.contact.phone));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Email")), qstring(profile.contact.email));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "In an emergency")), qstring(profile.emergency.name + " " + profile.emergency.phone).trimmed());
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Goal")), qstring(client.goal));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Training so far")), qstring(profile.trainingHistory));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Coach")), qstring(about.coachName));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Here since")), common::entryOfDay(client.startedOn));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Sessions a week")), QString::number(client.sessionsPerWeek));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Body mass")),
             client.bodyMass ? QStringLiteral("%1 %2").arg(common::numberText(*client.bodyMass), common::unitText(client.unit)) : QString());
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Away until")), dayOf(client.awayUntil));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Agreed on")), dayOf(profile.consentOn));
    return part;
}

DossierPart clearancePart(const board::ClientCase& about)
{
    DossierPart part{dossierText(QT_TRANSLATE_NOOP("Dossier", "Clearance and cautions")), {}};
    const clients::Clearance& clearance = about.clearance;
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Clearance")), qstring(clients::keyOf(clearance.state)).replace(QLatin1Char('_'), QLatin1Char(' ')));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Why")), qstring(clearance.reason));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Asked")), dayOf(clearance.askedOn));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Granted")), dayOf(clearance.grantedOn));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "By")), qstring(clearance.grantedBy));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Valid until")), dayOf(clearance.validUntil));
    addEntry(part, dossierText(QT_TRANSLATE_NOOP("Dossier", "Limits")), qstring(clearance.limits));
    for (const clients::Caution& caution : about.cautions) {
        addEntry(part, qstring(caution.bodyPart), qstring(caution.text));
    }
    return part;
}

DossierPart intakePart(const std::optional<clients::HealthIntake>& intake)
{
    DossierPart part{dossierText(QT_TRANSLATE_NOOP("Dossier", "Health answers, the latest")), {}};
    for (int i = 0; intake && i < clients::kHealthQuestionCount; ++i) {
        const auto question = static_cast<clients::HealthQuestion>(i);
        const clients::HealthAnswer& answer = intake->answerTo(question);
        QStringList words;
        if (answer.isYes) {
            words.append(plainText(*answer.isYes));
        }
        for (const clients::HealthMark mark : answer.marks) {
            words.append(common::markName(mark));
        }
        words.append(qstring(answer.detail));
        words.removeAll(QString());
        addEntry(part, QString::number(common::questionNumber(question)), common::questionText(question) + QLatin1Char(' ') + words.join(QStringLiteral(", ")));
    }
    return part;
}

struct FormHeading {
    store::FormKind kind;
    const char* heading;
};

constexpr FormHeading kFormHeadings[] = {{store::FormKind::Profile, QT_TRANSLATE_NOOP("Dossier", "Profile, as it was written")},
                                         {store::FormKind::HealthIntake, QT_TRANSLATE_NOOP("Dossier", "Health answers, all")},
                                         {store::FormKind::BodyMeasures, QT_TRANSLATE_NOOP("Dossier", "Measures")},
                                         {store::FormKind::MovementScreen, QT_TRANSLATE_NOOP("Dossier", "Movement screens")},
                                         {store::FormKind::FieldTests, QT_TRANSLATE_NOOP("Dossier", "Field tests")},
                                         {store::FormKind::StartingPlan, QT_TRANSLATE_NOOP("Dossier", "Starting plans")}};

/// Each of a list as an entry of its own, by its name: `Vertical pull`.
void takeNamed(const QJsonArray& list, std::vector<std::pair<QString, QString>>& named)
{
    for (const QJsonValue& item : list) {
        QString text = plainText(item);
        const qsizetype end = text.indexOf(QLatin1String(": "));
        const bool hasName = item.toObject().contains(QLatin1String("pattern")) || item.toObject().contains(QLatin1String("key"));
        const QString name = hasName && end > 0 ? text.left(1).toUpper() + text.mid(1, end - 1) : QString();
        named.emplace_back(name, name.isEmpty() ? text : text.mid(end + 2));
    }
}

DossierPart formsPart(const FormHeading& form, const std::vector<store::Form>& forms)
{
    DossierPart part{dossierText(form.heading), {}};
    for (const store::Form& one : forms) {
        QJsonObject rest = one.detail;
        if (rest.size() > 1) {
            rest.remove(QLatin1String("date"));  // its day stands before it
        }
        std::vector<std::pair<QString, QString>> named;
        for (const QString& key : rest.keys()) {
            if (const QJsonArray list = rest.value(key).toArray(); !list.isEmpty() && list.first().isObject()) {
                takeNamed(list, named);
                rest.remove(key);
            }
        }
        const QString text = plainText(rest);
        part.entries.emplace_back(common::entryOfDay(one.day), text.isEmpty() ? QStringLiteral("–") : text);
        part.entries.insert(part.entries.end(), named.begin(), named.end());
    }
    return part;
}

DossierPart lettersPart(const std::vector<store::Letter>& letters)
{
    DossierPart part{dossierText(QT_TRANSLATE_NOOP("Dossier", "Letters of doctors")), {}};
    for (const store::Letter& letter : letters) {
        QStringList words{qstring(letter.writtenBy), qstring(letter.limits), qstring(letter.fileName)};
        words.removeAll(QString());
        addEntry(part, common::entryOfDay(letter.day), words.join(QStringLiteral("; ")));
    }
    return part;
}

DossierPart liftsPart(const board::ClientCase& about)
{
    DossierPart part{dossierText(QT_TRANSLATE_NOOP("Dossier", "Lifts")), {}};
    for (const board::LiftCase& lift : about.lifts) {
        addEntry(part, common::patternName(lift.pattern),
                 dossierText(QT_TRANSLATE_NOOP("Dossier", "%1, since %2, now at the stage %3"))
                     .arg(qstring(lift.exercise.name), common::entryOfDay(lift.startedOn), common::stageName(lift.next.stage)));
    }
    return part;
}

DossierPart sessionsPart(const board::ClientCase& about)
{
    DossierPart part{dossierText(QT_TRANSLATE_NOOP("Dossier", "Sessions")), {}};
    for (const sessions::Session& session : about.sessions) {
        QStringList words{dossierText(QT_TRANSLATE_NOOP("Dossier", "%1, %2 min, %3")).arg(qstring(sessions::clockText(session.startMinute))).arg(session.minutes).arg(qstring(session.place)),
                          qstring(sessions::keyOf(session.state)).replace(QLatin1Char('_'), QLatin1Char(' '))};
        if (const auto report = about.reports.find(session.id); report != about.reports.end()) {
            words.append(common::reportText(report->second));
        }
        addEntry(part, common::entryOfDay(session.date), words.join(QStringLiteral(": ")));
    }
    return part;
}

DossierPart logPart(const board::ClientCase& about)
{
    DossierPart part{dossierText(QT_TRANSLATE_NOOP("Dossier", "What was done, and what was decided")), {}};
    std::vector<board::LogRow> rows = board::logRowsOf(about);
    for (auto row = rows.rbegin(); row != rows.rend(); ++row) {
        QStringList words{row->lift, row->what, row->whatNote, row->decision, row->next, row->nextNote};
        words.removeAll(QString());
        addEntry(part, common::entryOfDay(row->date), words.join(QStringLiteral("; ")).replace(QLatin1String(".; "), QLatin1String(". ")));
    }
    return part;
}

QString nameOfLift(const board::ClientCase& about, base::LiftId id)
{
    for (const board::LiftCase& lift : about.lifts) {
        if (lift.id == id) {
            return qstring(lift.exercise.name);
        }
    }
    return {};
}

DossierPart decisionsPart(const board::ClientCase& about, const std::vector<checkin::Decision>& decisions)
{
    DossierPart part{dossierText(QT_TRANSLATE_NOOP("Dossier", "Decided at check-ins")), {}};
    for (const checkin::Decision& decision : decisions) {
        addEntry(part, common::entryOfDay(decision.day), common::decisionText(decision, decision.lift ? nameOfLift(about, *decision.lift) : QString()));
    }
    return part;
}

DossierPart plansPart(const board::ClientCase& about, const std::vector<chalk::direction::ClientPlan>& plans, const std::vector<chalk::direction::TestedMaximum>& tests)
{
    DossierPart part{dossierText(QT_TRANSLATE_NOOP("Dossier", "Plans and tests of a maximum")), {}};
    for (const chalk::direction::ClientPlan& plan : plans) {
        addEntry(part, common::entryOfDay(plan.begunOn), QStringLiteral("%1, %2 %3").arg(common::planTitle(plan.plan), common::planDaysText(plan.plan), qstring(plan.note)));
    }
    for (const chalk::direction::TestedMaximum& test : tests) {
        addEntry(part, common::entryOfDay(test.day),
                 QStringLiteral("%1: %2 × %3. %4 %5").arg(nameOfLift(about, test.lift)).arg(test.reps.value()).arg(common::numberText(test.load), common::testEndText(test.end), qstring(test.note)));
    }
    return part;
}

DossierPart historyPart(const std::vector<store::ChangeEntry>& history, const lifts::Catalogue& catalogue)
{
    DossierPart part{dossierText(QT_TRANSLATE_NOOP("Dossier", "Who changed what")), {}};
    for (const store::ChangeEntry& entry : history) {
        const QString detail = history::historyDetail(entry, catalogue);
        addEntry(part, history::momentText(entry.atUtc), QStringLiteral("%1: %2%3").arg(history::historyAuthor(entry), history::historyTitle(entry, catalogue), detail.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(detail)));
    }
    return part;
}

/// Adds the parts that are forms; the first failure ends it.
store::Result<void> addForms(store::Database& database, base::ClientId client, DossierContent& content)
{
    store::ClientForms forms(database);
    const auto intake = forms.healthIntake(client);
    if (!intake) {
        return tl::make_unexpected(intake.error());
    }
    content.parts.push_back(intakePart(*intake));
    for (const FormHeading& heading : kFormHeadings) {
        const auto all = forms.all(client, heading.kind);
        if (!all) {
            return tl::make_unexpected(all.error());
        }
        content.parts.push_back(formsPart(heading, *all));
    }
    const auto letters = forms.letters(client);
    if (!letters) {
        return tl::make_unexpected(letters.error());
    }
    content.parts.push_back(lettersPart(*letters));
    return {};
}

store::Result<void> addTraining(store::Database& database, const board::ClientCase& about, const lifts::Catalogue& catalogue, DossierContent& content)
{
    const base::ClientId client = about.client.id;
    content.parts.push_back(liftsPart(about));
    content.parts.push_back(sessionsPart(about));
    content.parts.push_back(logPart(about));
    const auto decisions = store::DecisionReader(database).history(client);
    const auto plans = store::PlanReader(database).history(client);
    const auto tests = store::PlanReader(database).tests(client);
    const auto history = store::ChangeHistory(database).of(client, 1'000'000);
    for (const auto& failure : {decisions ? std::optional<store::StoreError>() : std::optional(decisions.error()), plans ? std::nullopt : std::optional(plans.error()),
                                tests ? std::nullopt : std::optional(tests.error()), history ? std::nullopt : std::optional(history.error())}) {
        if (failure) {
            return tl::make_unexpected(*failure);
        }
    }
    content.parts.push_back(decisionsPart(about, *decisions));
    content.parts.push_back(plansPart(about, *plans, *tests));
    content.parts.push_back(historyPart(*history, catalogue));
    return {};
}

}  // namespace

store::Result<DossierContent> readDossierContent(store::Database& database, const lifts::Catalogue& catalogue, base::ClientId client, base::Date today)
{
    const auto about = board::ClientPresenter(database, catalogue, {}).read(client, today);
    if (!about) {
        return tl::make_unexpected(about.error());
    }
    const auto profile = store::ClientForms(database).profile(client);
    const auto studio = store::StudioReader(database).name();
    if (!profile || !studio) {
        return tl::make_unexpected(profile ? studio.error() : profile.error());
    }
    DossierContent content{qstring(*studio), qstring(about->client.name), today, {}};
    content.parts = {personPart(*about, *profile), clearancePart(*about)};
    return addForms(database, client, content).and_then([&] { return addTraining(database, *about, catalogue, content); }).map([&content] { return std::move(content); });
}

}  // namespace chalk::ui::records
