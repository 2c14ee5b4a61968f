#pragma once

#include <QWidget>

class QLabel;
class QHBoxLayout;

namespace chalk::ui::common {
class ActionButton;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::week {

/// What the bar above the week says.
struct ProposalWords {
    QString lead;    ///< bold
    QString text;
    QString leave;   ///< the words of the button that changes nothing; empty for none
    QString keep;    ///< of the one that goes on; empty for none
    bool isTrouble = false;

    bool operator==(const ProposalWords&) const = default;
};

/// In the colour of what is not kept yet: what is proposed, what moves, what is being looked for, and what could not be done. Never cut: it wraps.
class ProposalBar : public QWidget {
    Q_OBJECT

public:
    explicit ProposalBar(const common::Look& look, QWidget* parent = nullptr);

    /// Hidden where there is nothing to say; else told to screen readers.
    void setWords(const ProposalWords& words);
    [[nodiscard]] const ProposalWords& words() const { return m_words; }

Q_SIGNALS:
    void left();
    void kept();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void dress();

    const common::Look& m_look;
    ProposalWords m_words;
    QHBoxLayout* m_row;
    QLabel* m_icon;
    QLabel* m_text;
    common::ActionButton* m_leave;
    common::ActionButton* m_keep;
};

}  // namespace chalk::ui::week
