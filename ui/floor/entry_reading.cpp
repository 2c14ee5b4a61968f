#include "ui/floor/entry_reading.h"

#include "ui/common/lock_words.h"
#include "ui/floor/entry_lines.h"
#include "ui/floor/entry_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using common::Signal;
using progression::PrescriptionKind;
using sessions::EntryPart;

constexpr int kMostOfRemark = 40;  ///< characters that a chip shows

QString readingText(const char* text)
{
    return QCoreApplication::translate("Floor", text);
}

EntryReading withMessage(EntryState state, common::BannerMessage message)
{
    EntryReading reading;
    reading.state = state;
    reading.message = std::move(message);
    return reading;
}

/// What a word of the line should have been.
QString adviceFor(const QString& word, EntryPart part)
{
    if (part == EntryPart::Verdict || part == EntryPart::Pause) {
        return readingText("It belongs to a rehearsal without load.");
    }
    const QChar first = word.isEmpty() ? QChar() : word.front();
    if (first == QLatin1Char('@')) {
        return readingText("A load is written @80 or @77.5, with two decimals at most.");
    }
    if (first == QLatin1Char('r')) {
        return readingText("Reps left go from r0 to r10.");
    }
    if (first == QLatin1Char('p')) {
        return readingText("Pain goes from p0 to p10.");
    }
    if (word.contains(QLatin1Char(':'))) {
        return readingText("A rest is written 2:30, up to 59:59.");
    }
    if (first.isDigit()) {
        return readingText("Sets are written 8 8 7 or 3x8: at most 20 sets of at most 1000.");
    }
    return readingText("Say reps, @load, r left, 2:30 rest, p pain, s shaky or x to skip.");
}

/// The first word that a lift with load cannot take.
const sessions::EntryToken* faultyToken(const sessions::EntryLine& line)
{
    const auto at = std::find_if(line.tokens.begin(), line.tokens.end(), [](const sessions::EntryToken& token) {
        return token.part == EntryPart::Unknown || token.part == EntryPart::Verdict || token.part == EntryPart::Pause;
    });
    return at == line.tokens.end() ? nullptr : &*at;
}

EntryReading faultIn(const QString& text, const sessions::EntryToken& token)
{
    const QByteArray bytes = text.toUtf8();
    const auto begin = static_cast<qsizetype>(token.begin);
    const QString word = QString::fromUtf8(bytes.mid(begin, static_cast<qsizetype>(token.length)));
    EntryReading reading = withMessage(EntryState::Fault, {Signal::Warn, QStringLiteral("warning"), readingText("“%1” is not understood.").arg(word),
                                                           adviceFor(word, token.part)});
    reading.faultBegin = static_cast<int>(QString::fromUtf8(bytes.left(begin)).size());
    reading.faultLength = static_cast<int>(word.size());
    return reading;
}

/// What follows, put into words; a hold is the colour of pain.
void addPreview(EntryReading& reading, const FloorClient& client, const FloorLift& lift)
{
    reading.preview = previewOf(lift, *reading.body, client.session.date);
    if (!reading.preview) {
        reading.state = EntryState::Fault;
        reading.message = {Signal::Warn, QStringLiteral("warning"), readingText("This cannot be judged."), readingText("Look at the load and the reps again.")};
        return;
    }
    const bool isHeld = reading.preview->next.kind == PrescriptionKind::Hold;
    const int pain = painOf(*reading.body);
    reading.message = isHeld ? common::BannerMessage{Signal::Pain, QStringLiteral("pain"), readingText("Stop this lift today."),
                                                     readingText("Pain %1 of 10. Saved so, the lift goes on hold until the coach releases it.").arg(pain)}
                             : common::BannerMessage{Signal::Muted, QStringLiteral("right"), nextTimeText(*reading.preview, lift),
                                                     whyText(*reading.preview, *reading.body, lift, client.session.date)};
    if (reading.preview->present) {
        reading.message.text += QLatin1Char(' ') + presentText(*reading.preview, lift);
    }
}

EntryReading readRehearsal(const FloorClient& client, const FloorLift& lift)
{
    const bool areAllAsked = lift.due.stage == progression::Stage::Pattern;
    if (const auto fault = faultOf(lift.rehearsal, lift.points, areAllAsked)) {
        const bool isWaiting = fault->place == RehearsalPlace::Point;
        EntryReading reading = withMessage(isWaiting ? EntryState::Waiting : EntryState::Fault,
                                           {isWaiting ? Signal::Muted : Signal::Warn, isWaiting ? QStringLiteral("right") : QStringLiteral("warning"),
                                            isWaiting ? readingText("Next time waits.") : readingText("Not yet."), fault->message});
        reading.rehearsalFault = fault;
        return reading;
    }
    if (lift.rehearsal.isEmpty()) {
        return withMessage(EntryState::Waiting, {Signal::Muted, QStringLiteral("right"), readingText("Next time waits."),
                                                 readingText("Judge the movement, or time a pause.")});
    }
    EntryReading reading;
    reading.body = rehearsalOf(lift.rehearsal, lift.points, lift.machine.setup().policy);
    addPreview(reading, client, lift);
    return reading;
}

}  // namespace

EntryReading readEntry(const FloorClient& client, const FloorLift& lift)
{
    if (client.isBlocked) {
        const common::LockWords lock = common::lockWordsOf(client.clearance, client.client, client.session.date);
        return withMessage(EntryState::Blocked, {Signal::Pain, QStringLiteral("clearance"), lock.headline + QLatin1Char('.'), lock.text});
    }
    if (lift.due.kind == PrescriptionKind::Hold && lift.saved.isNone()) {
        return withMessage(EntryState::OnHold, {Signal::Pain, QStringLiteral("pain"), readingText("On hold."),
                                                readingText("The lift waits for the coach to release it on the client’s board.")});
    }
    if (lift.isRehearsed()) {
        return readRehearsal(client, lift);
    }
    const auto line = sessions::parseEntryLine(lift.line.toStdString());
    if (const auto* token = faultyToken(line)) {
        return faultIn(lift.line, *token);
    }
    const QString remark = QString::fromStdString(line.note).trimmed();
    if (line.isSkipped) {
        EntryReading skipped = withMessage(EntryState::Skipped, {Signal::Muted, QStringLiteral("info"), readingText("Skipped today."),
                                                                 remark.isEmpty() ? readingText("Enter keeps it so; nothing is written.")
                                                                                  : readingText("Enter keeps it so; the words go to the session’s note.")});
        skipped.remark = remark;
        return skipped;
    }
    EntryReading reading;
    reading.remark = remark;
    reading.body = exposureOf(line, lift);
    if (!reading.body) {
        return withMessage(EntryState::OnHold, {Signal::Muted, QStringLiteral("info"), readingText("Nothing is planned here."), QString()});
    }
    reading.chips = chipsOf(std::get<progression::Exposure>(*reading.body), line, lift);
    if (!remark.isEmpty()) {
        const bool isLong = remark.size() > kMostOfRemark;
        reading.chips.push_back({readingText("note"), isLong ? remark.left(kMostOfRemark - 1).trimmed() + QChar(0x2026) : remark, {}});
    }
    addPreview(reading, client, lift);
    return reading;
}

}  // namespace chalk::ui::floor
