#include "ui/common/action_button.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/floor/floor_page.h"
#include "ui/floor/lift_table.h"
#include "ui/floor/maximum_test_dialog.h"
#include "ui/floor/session_words.h"
#include "ui/floor/swap_dialog.h"

#include <QAbstractButton>
#include <QAction>
#include <QInputDialog>
#include <QMenu>

namespace chalk::ui::floor {

namespace {

constexpr int kMostOfReason = 80;  ///< characters of own words
constexpr double kReasonWidth = 360;

}  // namespace

void FloorPage::skipLift()
{
    if (!hasEntry()) {
        return;
    }
    if (m_desk.lift()->isSkipped) {
        m_desk.skip();
        m_cardOf = {};
        showDesk(true);
    } else if (m_desk.lift()->saved.isNone()) {
        offerReasons();
    }
}

void FloorPage::offerReasons()
{
    QMenu menu(this);
    for (const sessions::SkipReason reason : sessions::kSkipReasons) {
        menu.addAction(skipReasonAction(reason), this, [this, reason] { skipFor(reason); });
    }
    menu.setDefaultAction(menu.actions().front());
    menu.setActiveAction(menu.actions().front());
    menu.exec(m_skip->mapToGlobal(QPoint(0, -menu.sizeHint().height())));
}

void FloorPage::skipFor(sessions::SkipReason reason)
{
    std::string why(sessions::keyOf(reason));
    if (reason == sessions::SkipReason::Other) {
        QInputDialog dialog(this);
        dialog.setWindowTitle(tr("Skip lift"));
        dialog.setLabelText(tr("Why, in a few words"));
        dialog.setOkButtonText(tr("Skip lift"));
        dialog.setCancelButtonText(tr("Leave"));
        for (auto* button : dialog.findChildren<QAbstractButton*>()) {
            button->setIcon({});  // no other button of the page has the style's own
        }
        dialog.resize(qRound(m_services.look.theme().scaled(kReasonWidth)), dialog.sizeHint().height());
        if (dialog.exec() != QDialog::Accepted) {
            return;
        }
        const QString words = dialog.textValue().simplified();
        why = words.isEmpty() ? why : words.left(kMostOfReason).toStdString();
    }
    m_desk.skip(why);
    m_cardOf = {};
    showDesk(true);
}

void FloorPage::shiftLift(int by)
{
    if (hasEntry()) {
        m_desk.shiftLift(by);
        m_cardOf = {};
        showDesk(true);
    }
}

void FloorPage::swapLift()
{
    if (!hasEntry()) {
        return;
    }
    if (!m_desk.checkSwap()) {
        showDesk(false);
        return;
    }
    const FloorLift& lift = *m_desk.lift();
    const auto offers = m_services.presenter.swapOffers(*m_desk.client(), lift);
    SwapDialog dialog(m_services.look, decisions::swappedLiftOf(lift.machine, lift.exercise, lift.exercise.pattern),
                      offers.value_or(std::vector<decisions::SwapOffer>()),
                      [this](const progression::Swap& swap, const QString& name) { return m_desk.swap(swap, name); }, this);
    if (!offers) {
        dialog.sayFault(offers.error().message);
    }
    if (dialog.exec() == QDialog::Accepted) {
        m_cardOf = {};
        Q_EMIT studioChanged();
    }
    showDesk(true);
}

void FloorPage::testLift()
{
    if (!hasEntry()) {
        return;
    }
    if (!m_desk.checkTest()) {
        showDesk(false);
        return;
    }
    const auto tested = m_desk.testedLift();
    if (!tested) {
        showDesk(false);
        return;
    }
    MaximumTestDialog dialog(m_services.look, *tested, [this, &tested](const MaximumTestRun& run, const QString& note) { return m_desk.keepTest(*tested, run, note); },
                             {nullptr, m_services.rests.now, m_services.rests.beep}, this);
    if (dialog.exec() == QDialog::Accepted) {
        m_cardOf = {};
        Q_EMIT studioChanged();
    }
    showDesk(true);
}

void FloorPage::deleteRecord()
{
    if (!hasEntry()) {
        return;
    }
    const SaveState state = m_desk.takeBack();
    if (state == SaveState::Saved) {
        m_cardOf = {};
        Q_EMIT studioChanged();
    }
    showDesk(state == SaveState::Saved);
}

void FloorPage::offerLifts()
{
    if (!hasEntry()) {
        return;
    }
    QMenu menu(this);
    for (const FloorLift& one : m_desk.client()->others) {
        menu.addAction(common::qstring(one.exercise.name), this, [this, id = one.id] {
            m_desk.addLift(id);
            m_cardOf = {};
            showDesk(true);
        });
    }
    menu.exec(m_add->mapToGlobal(QPoint(0, -menu.sizeHint().height())));
}

void FloorPage::offerLiftMenu(int row, const QPoint& at)
{
    if (!hasEntry()) {
        return;
    }
    if (row >= 0 && row != m_desk.liftIndex()) {
        m_desk.chooseLift(row);
        showDesk(true);
    }
    const FloorLift& lift = *m_desk.lift();
    const int last = static_cast<int>(m_desk.client()->lifts.size()) - 1;
    const bool isOpen = lift.saved.isNone();
    QMenu menu(this);
    const auto add = [&menu](QAction* action, bool fits) {
        QAction* item = menu.addAction(action->text(), action, &QAction::trigger);
        item->setShortcut(action->shortcut());
        item->setEnabled(fits);
    };
    add(m_liftActions.skip, isOpen);
    add(m_liftActions.swap, isOpen);
    add(m_liftActions.test, isOpen && lift.due.kind == progression::PrescriptionKind::Work);
    add(m_liftActions.earlier, m_desk.liftIndex() > 0);
    add(m_liftActions.later, m_desk.liftIndex() < last);
    menu.addSeparator();
    add(m_liftActions.remove, !isOpen);
    menu.exec(at);
}

}  // namespace chalk::ui::floor
