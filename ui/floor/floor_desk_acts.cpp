#include "ui/common/formats.h"
#include "ui/floor/floor_desk.h"
#include "ui/floor/maximum_test_words.h"
#include "ui/floor/session_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

QString actText(const char* text)
{
    return QCoreApplication::translate("Floor", text);
}

}  // namespace

SaveState FloorDesk::takeBack()
{
    const FloorLift* shown = lift();
    if (shown == nullptr || shown->saved.isNone()) {
        return SaveState::Refused;
    }
    if (!m_isTakeBackAsked) {
        forgetMessages();
        m_isTakeBackAsked = true;
        return SaveState::Asked;
    }
    const QString what = common::qstring(shown->exercise.name);
    const DraftKey key = keyOf(*shown);
    if (!keepLifts()) {  // the lift stays in the session, to be recorded anew
        return SaveState::Refused;
    }
    const auto outcome = m_presenter.takeBack(*shown);
    if (!outcome) {
        m_isTakeBackAsked = false;
        readTheirs(outcome.error());
        return refuse(outcome.error().message);
    }
    m_acts.add(outcome->act, actText("%1 deleted for %2").arg(what, client()->firstName()));
    m_drafts.erase(key);
    read();
    forgetMessages();
    return SaveState::Saved;
}

QString FloorDesk::nameIn(const sessions::Session& session) const
{
    for (const RunSlot& slot : m_run) {
        for (std::size_t i = 0; i < slot.sessions.size(); ++i) {
            if (slot.sessions[i].id == session.id) {
                return slot.firstNames[static_cast<qsizetype>(i)];
            }
        }
    }
    return {};
}

bool FloorDesk::setState(const sessions::Session& session, sessions::SessionState state)
{
    const QString name = nameIn(session);
    const auto outcome = state == sessions::SessionState::Withdrawn ? m_presenter.withdraw(session) : m_presenter.setState(session, state);
    if (outcome) {
        m_acts.add(outcome->act, stateDone(state, name));
        read();
    }
    if (!outcome) {
        readTheirs(outcome.error());
    }
    m_runRefusal = outcome ? QString() : outcome.error().message;
    return outcome.has_value();
}

void FloorDesk::readTheirs(const store::StoreError& error)
{
    if (error.kind == store::StoreError::Kind::Conflict) {
        read();
    }
}

bool FloorDesk::book(const sessions::Session& session)
{
    const auto outcome = m_presenter.book(session);
    if (outcome) {
        read();
        choose(session.client, {});
        m_acts.add(outcome->act, actText("Session added for %1").arg(client() == nullptr ? QString() : client()->firstName()));
    }
    m_runRefusal = outcome ? QString() : outcome.error().message;
    return outcome.has_value();
}

SaveState FloorDesk::saveReport(base::SessionId session, const sessions::SessionReport& report)
{
    const auto at = std::find_if(m_clients.begin(), m_clients.end(), [session](const FloorClient& one) { return one.session.id == session; });
    const bool isShown = at != m_clients.end();
    const QString who = isShown ? at->firstName() : QString();
    const auto waits = m_reports.find(session);
    const auto seen = waits != m_reports.end() ? std::optional(waits->second) : isShown ? std::optional(at->report) : std::nullopt;
    const auto outcome = m_presenter.saveReport(session, report, seen, who);
    if (!outcome && outcome.error().kind == store::StoreError::Kind::Unreachable) {
        forgetMessages();
        keepReport(session, report);
        return SaveState::Waits;
    }
    if (!outcome) {
        readTheirs(outcome.error());
        return refuse(outcome.error().message);
    }
    m_acts.add(outcome->act, who.isEmpty() ? actText("How the session felt") : actText("How the session felt, for %1").arg(who));
    read();
    return SaveState::Saved;
}

void FloorDesk::keepReport(base::SessionId session, const sessions::SessionReport& report)
{
    const auto at = std::find_if(m_clients.begin(), m_clients.end(), [session](const FloorClient& one) { return one.session.id == session; });
    if (at != m_clients.end()) {
        m_reports.try_emplace(session, at->report);
        at->report = report;
    }
    m_isReportKept = true;
}

bool FloorDesk::keepLifts()
{
    const auto kept = m_presenter.keepLifts(*editedClient());
    if (!kept) {
        readTheirs(kept.error());
        m_refusal = kept.error().message;
    }
    return kept.has_value();
}

void FloorDesk::skip(const std::string& why)
{
    FloorLift* shown = editedLift();
    if (shown == nullptr || !shown->saved.isNone()) {
        return;
    }
    shown->isSkipped = !shown->isSkipped;
    shown->skipWhy = shown->isSkipped ? why : std::string();
    shown->line.clear();
    keepDraft();
    if (keepLifts() && shown->isSkipped) {
        moveToOpenLift();
    }
}

bool FloorDesk::checkSwap()
{
    if (lift() == nullptr) {
        return false;
    }
    forgetMessages();
    const QString what = common::qstring(lift()->exercise.name);
    if (!lift()->saved.isNone()) {
        refuse(actText("%1 is recorded already. Delete the record first, then swap the exercise.").arg(what));
    } else if (!lift()->later.empty()) {
        refuse(actText("%1 goes on after this day. Swap it today or on the client’s board.").arg(what));
    }
    return m_refusal.isEmpty();
}

QString FloorDesk::swap(const progression::Swap& swap, const QString& name)
{
    FloorLift* shown = editedLift();
    if (shown == nullptr) {
        return actText("No lift is chosen.");
    }
    const auto outcome = m_presenter.swap(*client(), *shown, swap);
    if (!outcome) {
        readTheirs(outcome.error());
        return outcome.error().message;
    }
    m_acts.add(outcome->act, actText("%1 swapped for %2 for %3").arg(common::qstring(shown->exercise.name), name, client()->firstName()));
    m_drafts.erase(keyOf(*shown));
    bool isKept = true;
    if (shown->isSkipped) {
        shown->isSkipped = false;
        shown->skipWhy.clear();
        isKept = keepLifts();
    }
    const QString refusal = m_refusal;
    read();
    forgetMessages();
    m_refusal = isKept ? QString() : refusal;
    return {};
}

bool FloorDesk::checkTest()
{
    if (lift() == nullptr) {
        return false;
    }
    forgetMessages();
    const QString what = common::qstring(lift()->exercise.name);
    if (!lift()->saved.isNone()) {
        refuse(actText("%1 is recorded already. Delete the record first, then test it.").arg(what));
    } else if (!lift()->later.empty()) {
        refuse(actText("%1 goes on after this day. Test it today or from the client’s board.").arg(what));
    }
    return m_refusal.isEmpty();
}

std::optional<TestedLift> FloorDesk::testedLift()
{
    const FloorClient& of = *client();
    auto read = m_presenter.maximumTests().read({of.client, of.clearance, of.cautions}, lift()->id, lift()->exercise, of.session.date, of.session.id);
    if (!read) {
        refuse(read.error().message);
        return std::nullopt;
    }
    return *std::move(read);
}

QString FloorDesk::keepTest(const TestedLift& tested, const MaximumTestRun& run, const QString& note)
{
    const auto outcome = m_presenter.maximumTests().keep(tested, run, note.toStdString());
    if (!outcome) {
        return outcome.error().message;
    }
    m_acts.add(outcome->act, testKeptWords(tested, run));
    if (!tested.session.isNone() && lift() != nullptr) {
        m_drafts.erase(keyOf(*lift()));
        m_begun.insert(tested.session);
    }
    read();
    forgetMessages();
    return {};
}

void FloorDesk::shiftLift(int by)
{
    FloorClient* shown = editedClient();
    const int to = m_liftIndex + by;
    if (shown == nullptr || lift() == nullptr || to < 0 || to >= static_cast<int>(shown->lifts.size())) {
        return;
    }
    std::swap(shown->lifts[static_cast<std::size_t>(m_liftIndex)], shown->lifts[static_cast<std::size_t>(to)]);
    m_liftIndex = to;
    keepLifts();
}

void FloorDesk::addLift(base::LiftId id)
{
    FloorClient* shown = editedClient();
    if (shown == nullptr) {
        return;
    }
    const auto at = std::find_if(shown->others.begin(), shown->others.end(), [id](const FloorLift& one) { return one.id == id; });
    if (at == shown->others.end()) {
        return;
    }
    shown->lifts.push_back(std::move(*at));
    shown->others.erase(at);
    chooseLift(static_cast<int>(shown->lifts.size()) - 1);
    keepLifts();
}

}  // namespace chalk::ui::floor
