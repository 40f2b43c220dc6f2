/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stop Rule</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * When to stop the whole.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.StopRule#getId <em>Id</em>}</li>
 *   <li>{@link org.ferrule.model.StopRule#getWords <em>Words</em>}</li>
 *   <li>{@link org.ferrule.model.StopRule#getResource <em>Resource</em>}</li>
 *   <li>{@link org.ferrule.model.StopRule#getLimit <em>Limit</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getStopRule()
 * @model
 * @generated
 */
public interface StopRule extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name by which other elements of the document refer to it; unique among its kind.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.ferrule.model.ModelPackage#getStopRule_Id()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StopRule#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Words</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is to be done, and when.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Words</em>' attribute.
	 * @see #setWords(String)
	 * @see org.ferrule.model.ModelPackage#getStopRule_Words()
	 * @model required="true"
	 * @generated
	 */
	String getWords();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StopRule#getWords <em>Words</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Words</em>' attribute.
	 * @see #getWords()
	 * @generated
	 */
	void setWords(String value);

	/**
	 * Returns the value of the '<em><b>Resource</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.ResourceKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it limits; not given when a person has to watch it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Resource</em>' attribute.
	 * @see org.ferrule.model.ResourceKind
	 * @see #isSetResource()
	 * @see #unsetResource()
	 * @see #setResource(ResourceKind)
	 * @see org.ferrule.model.ModelPackage#getStopRule_Resource()
	 * @model unsettable="true"
	 * @generated
	 */
	ResourceKind getResource();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StopRule#getResource <em>Resource</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Resource</em>' attribute.
	 * @see org.ferrule.model.ResourceKind
	 * @see #isSetResource()
	 * @see #unsetResource()
	 * @see #getResource()
	 * @generated
	 */
	void setResource(ResourceKind value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.StopRule#getResource <em>Resource</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetResource()
	 * @see #getResource()
	 * @see #setResource(ResourceKind)
	 * @generated
	 */
	void unsetResource();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.StopRule#getResource <em>Resource</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Resource</em>' attribute is set.
	 * @see #unsetResource()
	 * @see #getResource()
	 * @see #setResource(ResourceKind)
	 * @generated
	 */
	boolean isSetResource();

	/**
	 * Returns the value of the '<em><b>Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How much of the resource may be used, in min, mL, mGy or money; given with a resource only.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Limit</em>' attribute.
	 * @see #setLimit(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getStopRule_Limit()
	 * @model annotation="https://ferrule.invalid/annotation/1 above='0'"
	 * @generated
	 */
	BigDecimal getLimit();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StopRule#getLimit <em>Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Limit</em>' attribute.
	 * @see #getLimit()
	 * @generated
	 */
	void setLimit(BigDecimal value);

} // StopRule
