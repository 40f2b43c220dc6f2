/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Extra Key</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A key of a document that this program does not know, kept so that saving loses nothing.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.ExtraKey#getKey <em>Key</em>}</li>
 *   <li>{@link org.ferrule.model.ExtraKey#getJson <em>Json</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getExtraKey()
 * @model
 * @generated
 */
public interface ExtraKey extends EObject
{
	/**
	 * Returns the value of the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The unknown key as it stands in the document.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Key</em>' attribute.
	 * @see #setKey(String)
	 * @see org.ferrule.model.ModelPackage#getExtraKey_Key()
	 * @model required="true"
	 * @generated
	 */
	String getKey();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ExtraKey#getKey <em>Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Key</em>' attribute.
	 * @see #getKey()
	 * @generated
	 */
	void setKey(String value);

	/**
	 * Returns the value of the '<em><b>Json</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The value as JSON text, numbers and strings spelled as they were found, laid out as if it stood alone.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Json</em>' attribute.
	 * @see #setJson(String)
	 * @see org.ferrule.model.ModelPackage#getExtraKey_Json()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Value as JSON'"
	 * @generated
	 */
	String getJson();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ExtraKey#getJson <em>Json</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Json</em>' attribute.
	 * @see #getJson()
	 * @generated
	 */
	void setJson(String value);

} // ExtraKey
