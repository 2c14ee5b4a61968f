#include "ui/floor/floor_desk.h"

#include "ui/common/formats.h"
#include "ui/floor/entry_lines.h"
#include "ui/floor/entry_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using common::Signal;
using progression::Exposure;
using progression::Rehearsal;

QString deskText(const char* text)
{
    return QCoreApplication::translate("Floor", text);
}

/// What is asked before an entry is kept; nothing where there is no doubt.
std::optional<sessions::EntryDoubt> doubtAbout(const progression::EventBody& body, const FloorLift& lift)
{
    const auto* exposure = std::get_if<Exposure>(&body);
    if (exposure == nullptr || lift.due.kind != progression::PrescriptionKind::Work) {
        return std::nullopt;
    }
    const auto doubts = sessions::doubtsAbout(*exposure, lift.plan(), lift.machine.loads());
    return doubts.empty() ? std::nullopt : std::optional(doubts.front());
}

/// Puts what was saved into the entry, to be corrected.
void fillFromSaved(FloorLift& lift)
{
    if (!lift.savedBody) {
        return;
    }
    if (const auto* exposure = std::get_if<Exposure>(&*lift.savedBody)) {
        lift.line = lineOf(*exposure, lift);
    } else if (const auto* rehearsal = std::get_if<Rehearsal>(&*lift.savedBody)) {
        lift.rehearsal = draftOf(*rehearsal, lift.points);
    }
}

template <class Items>
auto* itemAt(Items& items, int index)
{
    return index >= 0 && index < static_cast<int>(items.size()) ? &items[static_cast<std::size_t>(index)] : nullptr;
}

}  // namespace

FloorDesk::FloorDesk(FloorPresenter& presenter, const common::Clock& clock, common::ActHistory& acts)
    : m_presenter(presenter), m_clock(clock), m_acts(acts), m_day(clock.today())
{
}

void FloorDesk::read()
{
    const base::SessionId session = client() == nullptr ? base::SessionId() : client()->session.id;
    const base::LiftId chosen = lift() == nullptr ? base::LiftId() : lift()->id;
    m_runRefusal.clear();
    auto run = m_presenter.run(m_day);
    if (!run && run.error().kind == store::StoreError::Kind::Unreachable && !m_run.empty()) {
        m_runRefusal = run.error().message;  // what was read last stays, and what is typed can be kept
        return;
    }
    m_failure = run ? QString() : run.error().message;
    if (run) {
        forgetWaiting();
    }
    m_run = run ? *std::move(run) : std::vector<RunSlot>();
    if (!session.isNone() && choose({}, session)) {
        const auto& lifts = client()->lifts;
        const auto at = std::find_if(lifts.begin(), lifts.end(), [chosen](const FloorLift& one) { return one.id == chosen; });
        m_liftIndex = at == lifts.end() ? m_liftIndex : static_cast<int>(at - lifts.begin());
        return;
    }
    const auto open = std::find_if(m_run.begin(), m_run.end(), [](const RunSlot& one) { return one.isOpen(); });
    const auto recorded = std::find_if(m_run.rbegin(), m_run.rend(), [](const RunSlot& one) { return one.isRecorded(); });
    const auto last = recorded == m_run.rend() ? static_cast<int>(m_run.size()) - 1 : static_cast<int>(m_run.rend() - recorded) - 1;
    chooseSlot(open == m_run.end() ? last : static_cast<int>(open - m_run.begin()));
}

/// The studio answers again: what is written there counts, and what is still on its way is read when it has come.
void FloorDesk::forgetWaiting()
{
    for (const auto& [key, body] : m_waiting) {
        m_drafts.erase(key);
    }
    m_waiting.clear();
    m_reports.clear();
}

void FloorDesk::goToDay(base::Date day)
{
    m_day = day;
    m_clients.clear();
    read();
}

const FloorClient* FloorDesk::client() const
{
    return itemAt(m_clients, m_clientIndex);
}

FloorClient* FloorDesk::editedClient()
{
    return itemAt(m_clients, m_clientIndex);
}

const FloorLift* FloorDesk::lift() const
{
    return client() == nullptr ? nullptr : itemAt(client()->lifts, m_liftIndex);
}

FloorLift* FloorDesk::editedLift()
{
    return client() == nullptr ? nullptr : itemAt(editedClient()->lifts, m_liftIndex);
}

void FloorDesk::readSlot()
{
    m_clients.clear();
    const RunSlot* slot = itemAt(m_run, m_slot);
    if (slot == nullptr) {
        return;
    }
    auto clients = m_presenter.clients(*slot, m_clock.today(), m_begun);
    m_failure = clients ? QString() : clients.error().message;
    m_clients = clients ? *std::move(clients) : std::vector<FloorClient>();
    for (FloorClient& one : m_clients) {
        takeDrafts(one);
    }
}

void FloorDesk::takeDrafts(FloorClient& client)
{
    for (FloorLift& lift : client.lifts) {
        fillFromSaved(lift);
        if (const auto draft = m_drafts.find({client.session.id, lift.id}); draft != m_drafts.end()) {
            lift.line = draft->second.line.isEmpty() ? lift.line : draft->second.line;
            lift.rehearsal = draft->second.rehearsal.isEmpty() ? lift.rehearsal : draft->second.rehearsal;
            lift.isSkipped = lift.isSkipped && draft->second.line.isEmpty() && draft->second.rehearsal.isEmpty();
        }
    }
}

void FloorDesk::chooseSlot(int index)
{
    m_slot = itemAt(m_run, index) == nullptr ? -1 : index;
    readSlot();
    chooseClient(0);
}

void FloorDesk::chooseClient(int index)
{
    m_clientIndex = itemAt(m_clients, index) == nullptr ? -1 : index;
    m_liftIndex = -1;
    forgetMessages();
    if (const FloorClient* shown = client(); shown != nullptr && !shown->lifts.empty()) {
        const auto open = std::find_if(shown->lifts.begin(), shown->lifts.end(), [](const FloorLift& one) { return !one.isDone(); });
        m_liftIndex = open == shown->lifts.end() ? 0 : static_cast<int>(open - shown->lifts.begin());
    }
}

void FloorDesk::chooseLift(int index)
{
    m_liftIndex = client() == nullptr || itemAt(client()->lifts, index) == nullptr ? -1 : index;
    forgetMessages();
}

bool FloorDesk::moveSlot(int by)
{
    const bool isThere = itemAt(m_run, m_slot + by) != nullptr;
    if (isThere) {
        chooseSlot(m_slot + by);
    }
    return isThere;
}

bool FloorDesk::isSlotOpen() const
{
    return std::any_of(m_clients.begin(), m_clients.end(), [](const FloorClient& one) {
        return !one.isBlocked && std::any_of(one.lifts.begin(), one.lifts.end(), [](const FloorLift& lift) { return !lift.isDone(); });
    });
}

bool FloorDesk::choose(base::ClientId wanted, base::SessionId session)
{
    for (std::size_t i = 0; i < m_run.size(); ++i) {
        const auto& sessions = m_run[i].sessions;
        const bool isHere = std::any_of(sessions.begin(), sessions.end(), [&](const sessions::Session& one) {
            return session.isNone() ? one.client == wanted : one.id == session;
        });
        if (!isHere) {
            continue;
        }
        chooseSlot(static_cast<int>(i));
        const auto at = std::find_if(m_clients.begin(), m_clients.end(), [&](const FloorClient& one) {
            return session.isNone() ? one.client.id == wanted : one.session.id == session;
        });
        if (at != m_clients.end()) {
            chooseClient(static_cast<int>(at - m_clients.begin()));
            return true;
        }
    }
    return false;
}

bool FloorDesk::moveLift(int by)
{
    const bool isThere = client() != nullptr && itemAt(client()->lifts, m_liftIndex + by) != nullptr;
    if (isThere) {
        chooseLift(m_liftIndex + by);
    }
    return isThere;
}

bool FloorDesk::moveClient(int by)
{
    const bool isThere = itemAt(m_clients, m_clientIndex + by) != nullptr;
    if (isThere) {
        chooseClient(m_clientIndex + by);
    }
    return isThere;
}

void FloorDesk::moveToOpenLift()
{
    const auto& lifts = client()->lifts;
    const auto isOpen = [](const FloorLift& one) { return !one.isDone() && one.due.kind != progression::PrescriptionKind::Hold; };
    const auto here = lifts.begin() + m_liftIndex;
    auto next = std::find_if(here + 1, lifts.end(), isOpen);
    if (next == lifts.end()) {
        next = std::find_if(lifts.begin(), here, isOpen);
    }
    if (next != lifts.end() && next != here) {
        chooseLift(static_cast<int>(next - lifts.begin()));
    }
}

void FloorDesk::forgetMessages()
{
    m_isDoubtAsked = false;
    m_isTakeBackAsked = false;
    m_isReportKept = false;
    m_refusal.clear();
    m_changed.clear();
    m_runRefusal.clear();
}

void FloorDesk::keepDraft()
{
    if (const FloorLift* shown = lift()) {
        Draft& draft = m_drafts[keyOf(*shown)];
        draft.line = shown->line;
        draft.rehearsal = shown->rehearsal;
    }
}

void FloorDesk::type(const QString& line)
{
    FloorLift* shown = editedLift();
    if (shown == nullptr || shown->line == line) {
        return;
    }
    forgetMessages();
    shown->line = line;
    shown->isSkipped = false;
    keepDraft();
}

void FloorDesk::judge(const RehearsalDraft& rehearsal)
{
    FloorLift* shown = editedLift();
    if (shown == nullptr || shown->rehearsal == rehearsal) {
        return;
    }
    forgetMessages();
    shown->rehearsal = rehearsal;
    shown->isSkipped = false;
    keepDraft();
}

EntryReading FloorDesk::reading() const
{
    return lift() == nullptr ? EntryReading() : readEntry(*client(), *lift());
}

bool FloorDesk::isWaiting(const EntryReading& read) const
{
    const auto waits = lift() == nullptr ? m_waiting.end() : m_waiting.find(keyOf(*lift()));
    return waits != m_waiting.end() && read.body == waits->second;
}

common::BannerMessage FloorDesk::message() const
{
    if (!m_refusal.isEmpty()) {
        return {Signal::Pain, QStringLiteral("warning"), deskText("Not saved."), m_refusal};
    }
    if (!m_changed.isEmpty()) {
        return {Signal::Info, QStringLiteral("edit"), deskText("Corrected."), m_changed};
    }
    if (m_isTakeBackAsked) {
        return {Signal::Warn, QStringLiteral("warning"), deskText("Delete this record?"), takeBackText(*lift(), m_day)};
    }
    const EntryReading read = reading();
    if (m_isReportKept || isWaiting(read)) {
        return {Signal::Warn, QStringLiteral("rest"), deskText("Kept here."), deskText("It is sent as soon as the server answers.")};
    }
    if (m_isDoubtAsked && read.body) {
        if (const auto doubt = doubtAbout(*read.body, *lift())) {
            return {Signal::Warn, QStringLiteral("warning"), deskText("Is that right?"), doubtText(*doubt, *lift())};
        }
    }
    return read.message;
}

SaveState FloorDesk::refuse(const QString& why)
{
    m_refusal = why;
    return SaveState::Refused;
}

SaveState FloorDesk::save()
{
    if (lift() == nullptr) {
        return SaveState::Refused;
    }
    const EntryReading read = reading();
    if (read.state == EntryState::Skipped) {
        if (!read.remark.isEmpty() && !writeRemark(read.remark)) {
            return SaveState::Refused;
        }
        skip();
        return SaveState::Skipped;
    }
    if (read.state != EntryState::Ready || !read.body) {
        return SaveState::Refused;
    }
    if (!m_isDoubtAsked && doubtAbout(*read.body, *lift())) {
        m_isDoubtAsked = true;
        return SaveState::Asked;
    }
    m_isDoubtAsked = false;
    return write(*read.body, read.remark);
}

bool FloorDesk::writeRemark(const QString& remark)
{
    sessions::SessionReport noted = client()->report;
    sessions::addToNote(noted, lift()->exercise.name + ": " + remark.toStdString());
    const base::SessionId session = client()->session.id;
    if (m_reports.contains(session)) {
        return saveReport(session, noted) != SaveState::Refused;  // it goes on with what waits
    }
    const auto outcome = m_presenter.addRemark(*client(), *lift(), remark);
    if (!outcome && outcome.error().kind == store::StoreError::Kind::Unreachable) {
        keepReport(session, noted);
    } else if (!outcome) {
        refuse(outcome.error().message);
        return false;
    } else {
        m_acts.add(outcome->act, deskText("Note on %1 for %2").arg(common::qstring(lift()->exercise.name), client()->firstName()));
    }
    if (Draft& draft = m_drafts[keyOf(*lift())]; !lift()->saved.isNone()) {
        draft.line.clear();
    }
    return true;
}

SaveState FloorDesk::write(const progression::EventBody& body, const QString& remark)
{
    const FloorLift before = *lift();
    const bool isCorrection = !before.saved.isNone();
    if (isCorrection && before.savedBody == body) {
        if (!remark.isEmpty()) {
            if (!writeRemark(remark)) {
                return SaveState::Refused;
            }
            read();
        }
        moveToOpenLift();
        return SaveState::Saved;
    }
    if (const auto waits = m_waiting.find(keyOf(before)); waits != m_waiting.end() && waits->second == body) {
        moveToOpenLift();
        return SaveState::Waits;  // it is sent once, however often Enter is pressed
    }
    const auto outcome = m_presenter.save(*client(), before, body, remark);
    if (!outcome && outcome.error().kind == store::StoreError::Kind::Unreachable) {
        m_waiting.insert_or_assign(keyOf(before), body);
        forgetMessages();
        moveToOpenLift();
        return SaveState::Waits;
    }
    if (!outcome && outcome.error().kind == store::StoreError::Kind::Conflict) {
        if (m_presenter.asksAboutConflicts()) {
            m_drafts.erase(keyOf(before));  // the person chose the other version
        }
        read();
    }
    if (!outcome) {
        return refuse(outcome.error().message);
    }
    const QString what = common::qstring(before.exercise.name);
    m_acts.add(outcome->act, (isCorrection ? deskText("%1 corrected for %2") : deskText("%1 recorded for %2")).arg(what, client()->firstName()));
    Draft& draft = m_drafts[keyOf(before)];
    draft = {};
    m_begun.insert(client()->session.id);
    read();
    forgetMessages();
    if (isCorrection) {
        m_changed = correctionText(*before.savedBody, body, *outcome, before);
    } else {
        moveToOpenLift();
    }
    return SaveState::Saved;
}

bool FloorDesk::choosePattern(lifts::Pattern pattern)
{
    const FloorClient* shown = client();
    if (shown == nullptr || shown->isBlocked) {
        return false;
    }
    const auto isWanted = [pattern](const FloorLift& one) { return one.exercise.pattern == pattern; };
    const auto planned = std::find_if(shown->lifts.begin(), shown->lifts.end(), isWanted);
    if (planned != shown->lifts.end()) {
        chooseLift(static_cast<int>(planned - shown->lifts.begin()));
        return true;
    }
    const auto other = std::find_if(shown->others.begin(), shown->others.end(), isWanted);
    if (other == shown->others.end()) {
        return false;
    }
    addLift(other->id);
    return true;
}

}  // namespace chalk::ui::floor
