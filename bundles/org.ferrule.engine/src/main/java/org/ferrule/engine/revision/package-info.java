/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Two revisions of a document, compared by what they say and not by lines of text. */
package org.ferrule.engine.revision;
