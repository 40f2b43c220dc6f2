/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import org.eclipse.core.resources.IFile;

/**
 * A device as parts of the workbench pass it on to each other.
 *
 * @param library the file that holds it
 * @param id its id in the library
 */
public record DeviceReference(IFile library, String id) {

    /** The reference within the project: the path of the library, an exclamation mark, the id. */
    public String text() {
        return library.getProjectRelativePath() + "!" + id;
    }
}
