/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.recovery;

import java.time.Instant;

import org.eclipse.core.runtime.IPath;

/**
 * What a document said when it was last edited and not saved.
 *
 * @param path the path of its file in the workspace
 * @param time when that was
 * @param base the SHA-256 of the file then, in hexadecimal digits; empty if it could not be read
 * @param content the bytes that saving would have written
 */
public record UnsavedEdits(IPath path, Instant time, String base, byte[] content) {
}
