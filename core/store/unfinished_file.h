#pragma once

#include "core/store/store_error.h"
#include "core/store/studio_import.h"

#include <QByteArray>
#include <QString>

namespace chalk::store {

/// A file that is written as WANTED.….part, readable by its owner only, and goes away unless it is given its name: whoever is ended while writing
/// leaves a part, never half a file with a name. Two programs that write the same file at once have a part each.
class UnfinishedFile {
public:
    explicit UnfinishedFile(const QString& wanted);
    ~UnfinishedFile();
    UnfinishedFile(const UnfinishedFile&) = delete;
    UnfinishedFile& operator=(const UnfinishedFile&) = delete;

    [[nodiscard]] const QString& path() const { return m_path; }

    /// Makes it, empty, in the place of a part that somebody left, with what lies beside that. The folder must be there.
    [[nodiscard]] Result<void> make();
    /// Syncs it and gives it its name, in the place of what has it now; the folder is synced too.
    [[nodiscard]] Result<void> finish();

    /// Takes away the parts in `folder` that nobody has written to for an hour: they were left for good. Answers how many went.
    static int clear(const QString& folder);

private:
    QString m_wanted;
    QString m_path;
    bool m_isMine = false;  ///< made by us and not finished
};

/// Copies a file as it is to one that is not there, byte by byte: synced, then read again from the disk and compared before it gets its name. `progress`
/// is told megabytes. Nothing is left behind where it fails; the message names the file that could not be read or written.
[[nodiscard]] Result<void> copyWholeFile(const QString& from, const QString& to, const Progress& progress = {});

}  // namespace chalk::store
