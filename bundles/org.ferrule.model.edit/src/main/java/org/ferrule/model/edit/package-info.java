/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Item providers for the documents: labels, children, properties and commands for editors, without any widget. All of
 * it is generated from the Ecore; the labels are made by {@link org.ferrule.model.ObjectLabels}.
 */
package org.ferrule.model.edit;
