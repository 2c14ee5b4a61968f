#pragma once

#include <QWidget>

class QHBoxLayout;
class QLabel;

namespace chalk::ui::common {

class Look;

/// The top of a page, 64 px high at a text size of 100 %: a title, a line beside it, and what can be done at the right.
class PageHeader : public QWidget {
    Q_OBJECT

public:
    explicit PageHeader(const Look& look, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    /// Plain text beside the title; it gives way first where the room is short.
    void setSubtitle(const QString& subtitle);
    /// Puts a widget before the title: initials, a way back.
    void addLead(QWidget* widget);
    /// Adds a widget at the right end; the header owns it.
    void addTool(QWidget* widget);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void dress();
    void fitSubtitle();

    const Look& m_look;
    QString m_subtitleText;
    QLabel* m_title;
    QLabel* m_subtitle;
    QHBoxLayout* m_row;
    int m_leads = 0;
};

}  // namespace chalk::ui::common
