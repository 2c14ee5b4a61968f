#pragma once

#include "core/progression/stage.h"

#include <QFrame>

#include <optional>

class QGridLayout;
class QLabel;
class QScrollArea;
class QStackedLayout;
class QVBoxLayout;

namespace chalk::ui::common {
class ActionButton;
class EmptyState;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::board {

class EvidenceList;
class Painted;
struct ClientCase;
struct LiftCase;

/// Everything about the selected lift: what is next and why, what the next stage asks for, the last sessions, and what the
/// coach can do about it. An editor takes the place of all this while it is open.
class LiftInspector : public QFrame {
    Q_OBJECT

public:
    /// `look` outlives the inspector.
    explicit LiftInspector(const common::Look& look, QWidget* parent = nullptr);

    /// Shows a lift of `client`, or a pattern without one. Both are read now and not kept.
    void showLift(const LiftCase& lift, const ClientCase& client);
    void showNothing(const QString& headline, const QString& text);
    /// The sessions of one stage in place of the last ones; nothing: the last ones again.
    void readStage(const LiftCase& lift, std::optional<progression::Stage> stage);
    /// Actions give way to the reason why there are none.
    void setLock(const QString& headline, const QString& text);
    void setRoom(bool isNarrow, bool isLow);

    /// Puts `editor` in the place of the lift; the inspector owns it. The one before it goes.
    void openEditor(QWidget* editor);
    void closeEditor();
    [[nodiscard]] bool isEditing() const { return m_editor != nullptr; }

    /// Brings the evidence into view.
    void revealEvidence();

Q_SIGNALS:
    void changeAsked();
    void holdAsked();
    void swapAsked();
    void releaseAsked();
    void testAsked();
    void healthAsked();

private:
    QVBoxLayout* addSection(QWidget** section, QLabel** caption);
    void makeHead();
    void makeSections();
    void makeFoot();
    void fillHead(const LiftCase& lift, const ClientCase& client);
    void fillSetUp(const LiftCase& lift);
    void fillSessions(const LiftCase& lift, std::optional<progression::Stage> stage);
    void fillButtons(const LiftCase& lift);
    /// Locked, nothing of what would come next is shown.
    void showLock();
    void fit();

    const common::Look& m_look;
    bool m_isNarrow = false;
    bool m_isLow = false;
    bool m_isLocked = false;
    QString m_lockHeadline;
    QString m_lockText;
    QStackedLayout* m_pages;
    QWidget* m_readingPage;
    QScrollArea* m_scroll;
    QVBoxLayout* m_sections;
    QWidget* m_foot;
    common::EmptyState* m_nothing;
    QWidget* m_editor = nullptr;

    QLabel* m_name;
    Painted* m_tag;
    QWidget* m_due;
    Painted* m_headline;
    Painted* m_dials;
    Painted* m_plates;
    QLabel* m_setUp;
    QLabel* m_reserve;
    QWidget* m_whySection;
    QLabel* m_why;
    QLabel* m_whyRecord;
    QLabel* m_evidenceTitle;
    QWidget* m_evidenceSection;
    EvidenceList* m_evidence;
    QLabel* m_shortfall;
    QLabel* m_sessionsTitle;
    QWidget* m_sessionsSection;
    QGridLayout* m_sessions;
    QWidget* m_buttons;
    common::EmptyState* m_lock;
    common::ActionButton* m_change;
    common::ActionButton* m_hold;
    common::ActionButton* m_test;
    common::ActionButton* m_swap;
    common::ActionButton* m_release;
};

}  // namespace chalk::ui::board
