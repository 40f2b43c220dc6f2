/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Element</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Anything that is one JSON object of a document.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Element#getExtras <em>Extras</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getElement()
 * @model abstract="true"
 * @generated
 */
public interface Element extends EObject
{
	/**
	 * Returns the value of the '<em><b>Extras</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.ExtraKey}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The unknown keys of the object, in their order; written after the known ones.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Extras</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getElement_Extras()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Unknown keys'"
	 * @generated
	 */
	EList<ExtraKey> getExtras();

} // Element
