#pragma once

#include "ui/shell/place.h"

#include <QString>
#include <QWidget>

#include <functional>

class QVBoxLayout;

namespace chalk::ui::settings {

/// One part of the settings: a column of panels. What is changed in it is kept at once. It is made when it is first gone to and lives as
/// long as its page.
class SettingsSection : public QWidget {
    Q_OBJECT

public:
    explicit SettingsSection(QWidget* parent = nullptr);
    /// From here on nobody hears the section's parts: they are destroyed after it.
    ~SettingsSection() override;

    /// Reads everything again: whenever it comes on show, after F5, an undo or a change made elsewhere.
    virtual void refresh() = 0;
    /// Esc: closes or calls off what is open in it. False where there was nothing.
    virtual bool closeOrClear() { return false; }

Q_SIGNALS:
    /// Something was written to the studio: the other pages read again.
    void studioChanged();
    /// The person chose something that is shown elsewhere.
    void placeAsked(const chalk::ui::shell::Place& place);

protected:
    /// Where the panels go, from the top, 12 px apart; what room is left stays empty below them.
    [[nodiscard]] QVBoxLayout* column() const { return m_column; }

private:
    QVBoxLayout* m_column;
};

/// A section that the page can show. `make` is called once; the parent owns what it returns.
struct SectionEntry {
    QString key;   ///< `backup`; also the tab of a place
    QString name;  ///< `Backup`
    QString icon;  ///< a name of resources/icons
    std::function<SettingsSection*(QWidget* parent)> make;
};

}  // namespace chalk::ui::settings
