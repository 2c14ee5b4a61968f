#pragma once

#include "core/base/date.h"
#include "core/seal/passphrase.h"
#include "core/store/database.h"

#include <QString>
#include <QStringList>
#include <QTextStream>

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <vector>

namespace chalk::app {

/// The exit status of the program.
enum ExitStatus { kDone = 0, kFailed = 1, kWrongUse = 2 };

/// An option, `--name VALUE` or a bare `--name`.
struct Option {
    QString name;       ///< without the dashes
    QString valueName;  ///< empty for a flag
    QString help;
};

/// What a command is run with. Options are known and have their values; the number of operands is right.
struct CommandContext {
    QString command;
    QStringList operands;
    std::map<QString, QString> options;  ///< by name; flags map to an empty text
    base::Date today;                    ///< the clock's day, or that of --on
    std::function<QString()> atUtc;      ///< the moment by the clock, ISO 8601 in UTC: for acts in the log
    QString studioFile;                  ///< --studio, or the user's own
    QTextStream& out;
    QTextStream& err;

    [[nodiscard]] bool has(const QString& option) const { return options.count(option) > 0; }
    /// The option's value; `fallback` where it is absent.
    [[nodiscard]] QString value(const QString& option, const QString& fallback = {}) const;
    /// A whole number of an option, `fallback` where it is absent. Writes one line and answers nothing where it is none or out of range: the
    /// caller ends with kWrongUse.
    [[nodiscard]] std::optional<int> wholeNumber(const QString& option, int fallback, int low, int high) const;
    [[nodiscard]] bool isJson() const { return has(QStringLiteral("json")); }
    /// Writes one line, `chalkrung COMMAND: message`, and answers kWrongUse.
    int refuse(const QString& message) const;
    /// The same for work that failed; answers kFailed.
    int giveUp(const QString& message) const;

    /// The passphrase that --passphrase-file or CHALKRUNG_PASSPHRASE_FILE names; none where neither is there, or where `fault` says why.
    [[nodiscard]] std::optional<QString> passphraseText(QString& fault) const;
    /// Opens the studio. Where it is sealed, by the passphrase that was named, or that is asked for on the terminal; so is the password of a server.
    [[nodiscard]] store::Result<std::unique_ptr<store::Database>> openStudio(store::OpenMode mode) const;
    /// The same by a passphrase that is known.
    [[nodiscard]] store::Result<std::unique_ptr<store::Database>> openStudioWith(const seal::Passphrase& passphrase, store::OpenMode mode) const;
    /// Writes what the store says. kWrongUse where the file is not there, is no studio, is damaged, newer or locked; else kFailed.
    int report(const store::StoreError& error) const;
    /// The text of a file, or of standard input for `-`. Writes one line and answers nothing where it cannot be read: the caller
    /// ends with kWrongUse.
    [[nodiscard]] std::optional<QByteArray> readInput(const QString& name) const;
};

/// Whether a command draws text: then it is run with fonts, on no display.
enum class Painting : std::uint8_t {
    Never,
    WithPaper,  ///< where --paper or --pdf is given
    Always
};

/// One command of the command line.
struct Command {
    QString name;
    QString summary;   ///< one line
    QString operands;  ///< for the usage: `FILE`, `[DIR]`
    int leastOperands = 0;
    int mostOperands = 0;
    std::vector<Option> options;  ///< besides --studio, --on, --json and --help
    QString details;              ///< paragraphs for --help
    int (*run)(const CommandContext&);
    Painting painting = Painting::Never;
};

}  // namespace chalk::app
