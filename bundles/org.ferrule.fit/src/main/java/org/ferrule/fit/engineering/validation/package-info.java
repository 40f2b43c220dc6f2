/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Whether an installed program computes what is published: a report for the file of a version. */
package org.ferrule.fit.engineering.validation;
