#pragma once

#include <QString>
#include <QWidget>

class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace chalk::ui::common {
class ActionButton;
class Banner;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::decisions {

/// What the coach decides about a lift, in the place of the inspector: a title, fields of the kind, words for the record,
/// and one button that does it. Enter does it where it can be done, Esc leaves everything as it is.
class CoachEditor : public QWidget {
    Q_OBJECT

public:
    /// `look` outlives the editor. `notePrompt` stands in the field for the words until there are some.
    CoachEditor(const common::Look& look, const QString& title, const QString& notePrompt, QWidget* parent = nullptr);

    /// What stands in the field for the words, without spaces at its ends.
    [[nodiscard]] QString note() const;
    /// Says why it could not be done; empty takes the message away.
    void setFault(const QString& fault);
    /// Where typing starts.
    [[nodiscard]] virtual QWidget* firstField() const;

Q_SIGNALS:
    void accepted();
    void cancelled();

protected:
    /// Fields of the kind go here, above the words.
    [[nodiscard]] QVBoxLayout* fields() const { return m_fields; }
    /// A sentence above the words; empty hides it.
    void setHint(const QString& hint);
    [[nodiscard]] QLineEdit* noteField() const { return m_note; }
    void setAcceptText(const QString& text);
    /// Whether the fields of the kind can be used as they stand.
    [[nodiscard]] virtual bool isReady() const { return true; }
    /// Whether the decision can be written without words.
    [[nodiscard]] virtual bool needsNote() const { return true; }
    /// Reads the fields again: the button is on only where all is there.
    void review();

    /// Letters and digits stay in the editor: they are no keys of the page while it is open. A filter on itself, because an editor's own
    /// `event()` is what the coach decided.
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void acceptIfReady();

    QVBoxLayout* m_fields;
    common::Banner* m_hint;
    common::Banner* m_fault;
    QLineEdit* m_note;
    common::ActionButton* m_accept;
    common::ActionButton* m_cancel;
};

}  // namespace chalk::ui::decisions
