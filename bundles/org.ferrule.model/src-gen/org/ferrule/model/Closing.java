/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Closing</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The record of a closed case: what was planned and used, and which documents held then.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Closing#getClosed <em>Closed</em>}</li>
 *   <li>{@link org.ferrule.model.Closing#getEnded <em>Ended</em>}</li>
 *   <li>{@link org.ferrule.model.Closing#getPlan <em>Plan</em>}</li>
 *   <li>{@link org.ferrule.model.Closing#getDevices <em>Devices</em>}</li>
 *   <li>{@link org.ferrule.model.Closing#getHashes <em>Hashes</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getClosing()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Closing record'"
 * @generated
 */
public interface Closing extends Element
{
	/**
	 * Returns the value of the '<em><b>Closed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When it was closed, ISO 8601: year-month-day.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Closed</em>' attribute.
	 * @see #setClosed(String)
	 * @see org.ferrule.model.ModelPackage#getClosing_Closed()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 text='date' label='Closed on'"
	 * @generated
	 */
	String getClosed();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Closing#getClosed <em>Closed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Closed</em>' attribute.
	 * @see #getClosed()
	 * @generated
	 */
	void setClosed(String value);

	/**
	 * Returns the value of the '<em><b>Ended</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.CaseEnd}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How it ended.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Ended</em>' attribute.
	 * @see org.ferrule.model.CaseEnd
	 * @see #isSetEnded()
	 * @see #unsetEnded()
	 * @see #setEnded(CaseEnd)
	 * @see org.ferrule.model.ModelPackage#getClosing_Ended()
	 * @model unsettable="true" required="true"
	 * @generated
	 */
	CaseEnd getEnded();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Closing#getEnded <em>Ended</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ended</em>' attribute.
	 * @see org.ferrule.model.CaseEnd
	 * @see #isSetEnded()
	 * @see #unsetEnded()
	 * @see #getEnded()
	 * @generated
	 */
	void setEnded(CaseEnd value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Closing#getEnded <em>Ended</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetEnded()
	 * @see #getEnded()
	 * @see #setEnded(CaseEnd)
	 * @generated
	 */
	void unsetEnded();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Closing#getEnded <em>Ended</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Ended</em>' attribute is set.
	 * @see #unsetEnded()
	 * @see #getEnded()
	 * @see #setEnded(CaseEnd)
	 * @generated
	 */
	boolean isSetEnded();

	/**
	 * Returns the value of the '<em><b>Plan</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.ClosedStep}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The plan as it was.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Plan</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getClosing_Plan()
	 * @model containment="true"
	 * @generated
	 */
	EList<ClosedStep> getPlan();

	/**
	 * Returns the value of the '<em><b>Devices</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.ClosedDevice}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The devices that were used.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Devices</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getClosing_Devices()
	 * @model containment="true"
	 * @generated
	 */
	EList<ClosedDevice> getDevices();

	/**
	 * Returns the value of the '<em><b>Hashes</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.DocumentHash}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The documents as they were.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Hashes</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getClosing_Hashes()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Documents then'"
	 * @generated
	 */
	EList<DocumentHash> getHashes();

} // Closing
