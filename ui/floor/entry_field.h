#pragma once

#include <QLineEdit>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::floor {

/// The line that a lift's result is typed in: what is not understood is underlined at its place, and what can be written stands at
/// the right as long as there is room.
class EntryField : public QLineEdit {
    Q_OBJECT

public:
    explicit EntryField(const common::Look& look, QWidget* parent = nullptr);

    /// Underlines these characters; a length of 0 underlines nothing.
    void setFault(int begin, int length);
    /// Underlined now, in characters; for tests and screen readers.
    [[nodiscard]] int faultBegin() const { return m_begin; }
    [[nodiscard]] int faultLength() const { return m_length; }
    void setHint(const QString& hint);

    /// What was typed so far cannot be taken back any more: it is written, and Ctrl+Z is the window's.
    void forgetTyping();

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void dress();

    const common::Look& m_look;
    QString m_hint;
    int m_begin = 0;
    int m_length = 0;
};

}  // namespace chalk::ui::floor
