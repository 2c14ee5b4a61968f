#include "ui/board/change_editor.h"
#include "ui/check_in/check_in_page.h"
#include "ui/check_in/decision_form.h"
#include "ui/common/action_button.h"
#include "ui/common/check_in_summary.h"
#include "ui/common/check_in_words.h"
#include "ui/decisions/swap_editor.h"

#include <QClipboard>
#include <QGuiApplication>

// What is opened, copied and printed from the page.

namespace chalk::ui::check_in {

void CheckInPage::openEditor(checkin::ChoiceKind kind)
{
    const CheckInCase* page = m_desk->page();
    if (page == nullptr || m_desk->lift() >= page->evidence.lifts.size()) {
        return;
    }
    auto read = m_desk->source().lift(m_desk->client(), page->evidence.lifts[m_desk->lift()].lift, m_desk->day());
    if (!read) {
        m_form->setFault(read.error().message);
        return;
    }
    const board::LiftCase& lift = read->lift;
    if (kind == checkin::ChoiceKind::Swap) {
        auto* editor = new decisions::SwapEditor(m_services.look, decisions::swappedLiftOf(lift.machine, lift.exercise, lift.pattern), read->offers);
        connect(editor, &decisions::CoachEditor::accepted, m_form, [this, editor] {
            if (const auto event = editor->event()) {
                const QString name = editor->chosenName();
                m_form->closeEditor();
                m_form->setEdited(*event, name);
            }
        });
        m_form->openEditor(editor);
        return;
    }
    auto* editor = new board::ChangeEditor(m_services.look, lift);
    connect(editor, &decisions::CoachEditor::accepted, m_form, [this, editor, machine = lift.machine, day = m_desk->day()] {
        if (const auto event = editor->event()) {
            progression::LiftMachine after = machine;
            after.apply(day, *event);
            const CheckInCase* now = m_desk->page();
            const checkin::LiftEvidence& of = now->evidence.lifts[m_desk->lift()];
            const QString text = common::prescriptionText(after.prescriptionOn(day), of, m_services.catalogue.find(of.exerciseKey));
            m_form->closeEditor();
            m_form->setEdited(*event, text);
        }
    });
    m_form->openEditor(editor);
}

void CheckInPage::copySummary()
{
    const CheckInCase* page = m_desk->page();
    if (page == nullptr) {
        return;
    }
    const auto choice = m_form->chosen();
    const auto& lifts = page->evidence.lifts;
    QGuiApplication::clipboard()->setText(common::checkInMessage({page->evidence, m_desk->lift() < lifts.size() ? &lifts[m_desk->lift()] : nullptr,
                                                                  choice ? &*choice : nullptr, m_desk->day(), m_form->nextReview()},
                                                                 m_services.catalogue));
    m_copy->setText(tr("Copied"));
}

void CheckInPage::printReports()
{
    std::vector<base::ClientId> decided;
    for (const checkin::QueueEntry& entry : m_desk->queue()) {
        if (entry.decided) {
            decided.push_back(entry.client);
        }
    }
    Q_EMIT reportsAsked(decided);
}

}  // namespace chalk::ui::check_in
