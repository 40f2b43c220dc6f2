/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Sign Off</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The record of a chart that was signed off: by whom and when, what was asked, on which documents it rested, and every verdict.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.SignOff#getBy <em>By</em>}</li>
 *   <li>{@link org.ferrule.model.SignOff#getDate <em>Date</em>}</li>
 *   <li>{@link org.ferrule.model.SignOff#getRuleSet <em>Rule Set</em>}</li>
 *   <li>{@link org.ferrule.model.SignOff#getAsked <em>Asked</em>}</li>
 *   <li>{@link org.ferrule.model.SignOff#getDocuments <em>Documents</em>}</li>
 *   <li>{@link org.ferrule.model.SignOff#getInner <em>Inner</em>}</li>
 *   <li>{@link org.ferrule.model.SignOff#getRows <em>Rows</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getSignOff()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Sign-off'"
 * @generated
 */
public interface SignOff extends Element
{
	/**
	 * Returns the value of the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who signed it off: name or initials, as typed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>By</em>' attribute.
	 * @see #setBy(String)
	 * @see org.ferrule.model.ModelPackage#getSignOff_By()
	 * @model required="true"
	 * @generated
	 */
	String getBy();

	/**
	 * Sets the value of the '{@link org.ferrule.model.SignOff#getBy <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By</em>' attribute.
	 * @see #getBy()
	 * @generated
	 */
	void setBy(String value);

	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The day, ISO 8601: year-month-day.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(String)
	 * @see org.ferrule.model.ModelPackage#getSignOff_Date()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 text='date' label='Signed off on'"
	 * @generated
	 */
	String getDate();

	/**
	 * Sets the value of the '{@link org.ferrule.model.SignOff#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(String value);

	/**
	 * Returns the value of the '<em><b>Rule Set</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The title of the rule set.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rule Set</em>' attribute.
	 * @see #setRuleSet(String)
	 * @see org.ferrule.model.ModelPackage#getSignOff_RuleSet()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Rule set'"
	 * @generated
	 */
	String getRuleSet();

	/**
	 * Sets the value of the '{@link org.ferrule.model.SignOff#getRuleSet <em>Rule Set</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rule Set</em>' attribute.
	 * @see #getRuleSet()
	 * @generated
	 */
	void setRuleSet(String value);

	/**
	 * Returns the value of the '<em><b>Asked</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was asked beyond the devices, one statement a line: the key, a colon and the value as it was typed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Asked</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getSignOff_Asked()
	 * @model unique="false"
	 * @generated
	 */
	EList<String> getAsked();

	/**
	 * Returns the value of the '<em><b>Documents</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.DocumentHash}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The documents as they were: the rule set first, then the libraries.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Documents</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getSignOff_Documents()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Documents then'"
	 * @generated
	 */
	EList<DocumentHash> getDocuments();

	/**
	 * Returns the value of the '<em><b>Inner</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The columns: path!id of each inner device.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Inner</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getSignOff_Inner()
	 * @model unique="false"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Columns then'"
	 * @generated
	 */
	EList<String> getInner();

	/**
	 * Returns the value of the '<em><b>Rows</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.SignedRow}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The rows with their verdicts.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rows</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getSignOff_Rows()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Rows then'"
	 * @generated
	 */
	EList<SignedRow> getRows();

} // SignOff
