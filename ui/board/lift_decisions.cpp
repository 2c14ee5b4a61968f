#include "ui/board/lift_decisions.h"

#include "core/progression/coach_choice.h"
#include "ui/board/board_tab.h"
#include "ui/board/board_words.h"
#include "ui/board/change_editor.h"
#include "ui/board/client_presenter.h"
#include "ui/board/client_words.h"
#include "ui/board/lift_inspector.h"
#include "ui/board/note_editor.h"
#include "ui/common/act_history.h"
#include "ui/common/formats.h"
#include "ui/common/settling.h"
#include "ui/decisions/swap_editor.h"
#include "ui/floor/maximum_test_dialog.h"
#include "ui/floor/maximum_test_words.h"

namespace chalk::ui::board {

namespace {

QString liftName(const LiftCase& lift)
{
    return common::qstring(lift.exercise.name).toLower();
}

}  // namespace

LiftDecisions::LiftDecisions(const common::Look& look, BoardTab& board, ClientPresenter& presenter, common::Dialogs& dialogs,
                             common::ActHistory& acts, QObject* parent)
    : QObject(parent), m_look(look), m_board(board), m_presenter(presenter), m_dialogs(dialogs), m_acts(acts)
{
}

const LiftCase* LiftDecisions::lift() const
{
    return m_client == nullptr || m_client->isBlocked() ? nullptr : m_board.selectedLift();
}

bool LiftDecisions::canChange() const
{
    return lift() != nullptr && lift()->next.kind != progression::PrescriptionKind::Hold;
}

bool LiftDecisions::canHold() const
{
    return lift() != nullptr && lift()->next.kind == progression::PrescriptionKind::Work;
}

bool LiftDecisions::canSwap() const
{
    return lift() != nullptr;
}

bool LiftDecisions::canRelease() const
{
    return lift() != nullptr && lift()->next.kind == progression::PrescriptionKind::Hold;
}

bool LiftDecisions::canTest() const
{
    return canHold() && lift()->machine.kit().measure == lifts::Measure::Reps;
}

void LiftDecisions::edit(decisions::CoachEditor* editor)
{
    connect(editor, &decisions::CoachEditor::cancelled, &m_board, &BoardTab::endEditing);
    m_board.inspector()->openEditor(editor);
    editor->firstField()->setFocus(Qt::OtherFocusReason);
}

void LiftDecisions::finish(base::ActId act, const QString& words)
{
    m_acts.add(act, words);
    m_board.endEditing();
    Q_EMIT written();
}

std::optional<base::ActId> LiftDecisions::write(decisions::CoachEditor& editor, const LiftCase& lift, const progression::EventBody& body)
{
    const auto outcome = common::settled(m_dialogs, m_presenter.database(), {}, [&](const common::Settling& settling) {
        return m_presenter.write(lift, m_client->client.id, m_client->today, body, settling.seen.has_value());
    });
    if (outcome) {
        return outcome->act;
    }
    if (outcome.error().kind == store::StoreError::Kind::Conflict) {
        m_board.endEditing();
        Q_EMIT written();
    } else {
        editor.setFault(outcome.error().message);
    }
    return std::nullopt;
}

void LiftDecisions::change()
{
    if (!canChange()) {
        return;
    }
    auto* editor = new ChangeEditor(m_look, *lift());
    connect(editor, &decisions::CoachEditor::accepted, this, [this, editor, before = *lift()] {
        const auto event = editor->event();
        if (!event) {
            return;
        }
        if (const auto act = write(*editor, before, *event)) {
            progression::LiftMachine after = before.machine;
            after.apply(before.day, *event);
            finish(*act, changedWords(before, after.prescriptionOn(before.day), *m_client));
        }
    });
    edit(editor);
}

void LiftDecisions::hold()
{
    if (!canHold()) {
        return;
    }
    LiftCase held = *lift();
    const bool isLighter = held.next.isLighter();
    held.next = held.machine.withoutLighterWeek().prescriptionOn(held.day);
    const QString then = isLighter ? tr("The lighter week ends, and the next session is at %1, %2. What it does then decides again.")
                                   : tr("The next session stays at %1, %2. What it does then decides again.");
    auto* editor = new NoteEditor(m_look, tr("Hold %1 here").arg(liftName(held)), then.arg(loadTextOf(held, held.next.load), setsTextOf(held, held.next)),
                                  tr("Reason, a few words"), tr("Hold here"));
    connect(editor, &decisions::CoachEditor::accepted, this, [this, editor, before = held] {
        const auto set = keepingSetOf(before.machine, before.next, editor->note().toStdString());
        if (const auto act = write(*editor, before, set)) {
            finish(*act, heldWords(before, *m_client));
        }
    });
    edit(editor);
}

void LiftDecisions::release()
{
    if (!canRelease()) {
        return;
    }
    const QString then = progression::isLoaded(lift()->next.stage)
                             ? tr("It comes back by way of Control, without load, and then a step lighter.")
                             : tr("It stays on its rung.");
    auto* editor = new NoteEditor(m_look, tr("Release %1").arg(liftName(*lift())), then, tr("Note, what makes it safe"), tr("Release"));
    connect(editor, &decisions::CoachEditor::accepted, this, [this, editor, before = *lift()] {
        if (const auto act = write(*editor, before, progression::Release{editor->note().toStdString()})) {
            finish(*act, releasedWords(before, *m_client));
        }
    });
    edit(editor);
}

void LiftDecisions::test()
{
    if (!canTest()) {
        return;
    }
    auto desk = m_presenter.maximumTests();
    const auto tested = desk.read({m_client->client, m_client->clearance, m_client->cautions}, lift()->id, lift()->exercise, m_client->today);
    if (!tested) {
        auto* told = new NoteEditor(m_look, tr("Test a maximum"), tested.error().message, QString(), tr("Close"));
        connect(told, &decisions::CoachEditor::accepted, &m_board, &BoardTab::endEditing);
        edit(told);
        return;
    }
    const auto keep = [&](const floor::MaximumTestRun& run, const QString& note) {
        const auto outcome = desk.keep(*tested, run, note.toStdString());
        if (outcome) {
            m_acts.add(outcome->act, floor::testKeptWords(*tested, run));
        }
        return outcome ? QString() : outcome.error().message;
    };
    floor::MaximumTestDialog dialog(m_look, *tested, keep, {}, &m_board);
    if (dialog.exec() == QDialog::Accepted) {
        Q_EMIT written();
    }
}

void LiftDecisions::swap()
{
    if (!canSwap()) {
        return;
    }
    const auto offers = m_presenter.swapOffers(*lift(), *m_client);
    auto* editor = new decisions::SwapEditor(m_look, decisions::swappedLiftOf(lift()->machine, lift()->exercise, lift()->pattern),
                                             offers.value_or(std::vector<decisions::SwapOffer>()));
    if (!offers) {
        editor->setFault(offers.error().message);
    }
    connect(editor, &decisions::CoachEditor::accepted, this, [this, editor, before = *lift()] {
        const QString name = editor->chosenName();
        const auto event = editor->event();
        if (!event) {
            return;
        }
        if (const auto act = write(*editor, before, *event)) {
            finish(*act, swappedWords(before, name, *m_client));
        }
    });
    edit(editor);
}

}  // namespace chalk::ui::board
