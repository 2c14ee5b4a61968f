#pragma once

#include <QFrame>

class QHBoxLayout;
class QLabel;
class QVBoxLayout;

namespace chalk::ui::common {

class Look;

/// A white card with a line around it. With a title it has a head, 44 px high at a text size of 100 %.
class Panel : public QFrame {
    Q_OBJECT

public:
    explicit Panel(const Look& look, QWidget* parent = nullptr);

    /// `Needs attention today`; `note` is small and muted beside it. An empty title takes the head away.
    void setTitle(const QString& title, const QString& note = {});
    /// Adds a widget at the right end of the head.
    void addHeadTool(QWidget* widget);
    /// Where the contents go; no margins, no spacing.
    [[nodiscard]] QVBoxLayout* body() const { return m_body; }

private:
    void dress();

    const Look& m_look;
    QWidget* m_head;
    QHBoxLayout* m_headRow;
    QLabel* m_title;
    QLabel* m_note;
    QFrame* m_line;
    QVBoxLayout* m_body;
};

}  // namespace chalk::ui::common
