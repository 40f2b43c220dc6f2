/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Sourced</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An element that can say where its figures come from. Where it says nothing, the source of the element that holds it speaks for it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Sourced#getSource <em>Source</em>}</li>
 *   <li>{@link org.ferrule.model.Sourced#getPage <em>Page</em>}</li>
 *   <li>{@link org.ferrule.model.Sourced#getNote <em>Note</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getSourced()
 * @model abstract="true"
 *        annotation="https://ferrule.invalid/annotation/1 position='last'"
 * @generated
 */
public interface Sourced extends Element
{
	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of a source of the same document.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see org.ferrule.model.ModelPackage#getSourced_Source()
	 * @model annotation="https://ferrule.invalid/annotation/1 refers='Source'"
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Sourced#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where in the source: page, table or section.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Page</em>' attribute.
	 * @see #setPage(String)
	 * @see org.ferrule.model.ModelPackage#getSourced_Page()
	 * @model
	 * @generated
	 */
	String getPage();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Sourced#getPage <em>Page</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Page</em>' attribute.
	 * @see #getPage()
	 * @generated
	 */
	void setPage(String value);

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A free remark.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see org.ferrule.model.ModelPackage#getSourced_Note()
	 * @model
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Sourced#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

} // Sourced
